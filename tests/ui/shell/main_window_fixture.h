#pragma once

#include "ui/shell/main_window.h"

#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPointer>
#include <QPushButton>
#include <QScrollBar>
#include <QSettings>
#include <QSignalSpy>
#include <QTest>
#include <future>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/shell/moment_button.h"
#include "ui/shell/moments_row.h"
#include "ui/shell/outside_changes.h"
#include "ui/shell/undo_buttons.h"
#include "ui/widgets/page.h"

namespace quarterturn {

inline ScreenEntry entry(Moment moment, const QString& title) {
    return {moment, title, [](Session&) -> Screen* { return new SayingScreen; }};
}

inline std::vector<ScreenEntry> two_moments() {
    return {entry(Moment::coming_up, QStringLiteral("What's coming up")),
            entry(Moment::round_the_head, QStringLiteral("Round the head"))};
}

inline QWidget* welcome(Session&) {
    return new QLabel(QStringLiteral("welcome"));
}

class MainWindowTest : public testing::Test {
  protected:
    SayingScreen* screen(Moment moment) {
        return static_cast<SayingScreen*>(window.screen(moment));
    }
    MomentButton* button(const QString& title) {
        for (auto* found : window.findChildren<MomentButton*>()) {
            if (found->text() == title) return found;
        }
        return nullptr;
    }

    OutsideChanges& outside() { return *window.findChild<OutsideChanges*>(); }

    OpenSession open;
    MainWindow window{open.session, two_moments(), welcome};
};

}  // namespace quarterturn
