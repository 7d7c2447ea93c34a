#pragma once

#include "ui/settings/settings_part.h"
#include "ui/theme/theme.h"

class QAbstractButton;
class QButtonGroup;

namespace quarterturn {

class Session;

// How the window looks on this computer: its mood and the size of its text.
class WindowPart : public SettingsPart {
    Q_OBJECT
  public:
    explicit WindowPart(Session& session);

    void refresh() override;

  private:
    void add_moods();
    void add_text_sizes();
    void choose();

    Session& session_;
    QButtonGroup* moods_;
    QButtonGroup* sizes_;
};

}  // namespace quarterturn
