#pragma once

#include "ui/settings/settings_part.h"

class QPushButton;

namespace quarterturn {

class Session;

// When something was erased, and what is left of it to be looked at.
class ErasedPart : public SettingsPart {
    Q_OBJECT
  public:
    explicit ErasedPart(Session& session);

    void refresh() override;

  private:
    void show_erasures();
    void show_left();
    void forget_left();

    Session& session_;
    QVBoxLayout* erasures_;
    QVBoxLayout* left_;
    QPushButton* looked_at_;
};

}  // namespace quarterturn
