#pragma once

#include "ui/coming_up/coming_up_screen.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include "indexer/looks/consents.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/coming_up/occasion_card.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {

class ComingUpScreenTest : public testing::Test {
  protected:
    ComingUpScreenTest() {
        screen.resize(1280, 800);
        screen.refresh();
        show_active(screen);
    }

    template <class Widget>
    Widget* called(const QString& name) {
        for (Widget* widget : screen.findChildren<Widget*>()) {
            if (widget->isVisible() && widget->accessibleName() == name) return widget;
        }
        return nullptr;
    }
    QPushButton* button(const QString& text) {
        for (auto* found : screen.findChildren<QPushButton*>()) {
            if (found->isVisible() && found->text() == text) return found;
        }
        return nullptr;
    }
    void press(const QString& text) {
        ASSERT_NE(button(text), nullptr) << text.toStdString();
        QTest::mouseClick(button(text), Qt::LeftButton);
        show_active(screen);
    }
    QList<OccasionCard*> cards() { return screen.findChildren<OccasionCard*>(); }
    Library& library() { return open.session.library(); }

    OpenSession open;
    ComingUpScreen screen{open.session};
};

}  // namespace quarterturn
