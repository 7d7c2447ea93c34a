#pragma once

#include <vector>

#include "ui/shell/screen.h"

class QScrollArea;

namespace quarterturn {

class LockPart;
class SettingsPart;

// What holds for all her work. Each choice counts at once.
class SettingsScreen : public Screen {
    Q_OBJECT
  public:
    explicit SettingsScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

  protected:
    void hideEvent(QHideEvent* event) override;

  private:
    LockPart* lock_;
    std::vector<SettingsPart*> parts_;
    QScrollArea* scroll_;
};

}  // namespace quarterturn
