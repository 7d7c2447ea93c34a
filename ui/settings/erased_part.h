#pragma once

#include "ui/settings/settings_part.h"

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

    Session& session_;
    QVBoxLayout* erasures_;
    QVBoxLayout* left_;
};

}  // namespace quarterturn
