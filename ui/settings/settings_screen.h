#pragma once

#include <vector>

#include "ui/shell/screen.h"

namespace quarterturn {

class SettingsPart;

// What holds for all her work. Each choice counts at once.
class SettingsScreen : public Screen {
    Q_OBJECT
  public:
    explicit SettingsScreen(Session& session);

    QString help() const override;
    void refresh() override;

  protected:
    void hideEvent(QHideEvent* event) override;

  private:
    std::vector<SettingsPart*> parts_;
};

}  // namespace quarterturn
