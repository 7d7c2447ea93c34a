#pragma once

#include "ui/running_order/running_order_screen.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

#include "tests/support/command.h"
#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/running_order/gaps_part.h"
#include "ui/running_order/morning_chart.h"
#include "ui/running_order/seat_bar.h"
#include "ui/running_order/sentences.h"
#include "ui/running_order/time_words.h"
#include "ui/widgets/sentence_link.h"
#include "ui/widgets/words.h"

namespace quarterturn {

// The bride is set, cools and is finished; Ada is done in one go. Both by half past twelve.
class RunningOrderScreenTest : public testing::Test {
  protected:
    RunningOrderScreenTest() {
        QObject::connect(&open.session, &Session::records_changed, &screen,
                         [this] { screen.refresh(); });
        screen.resize(1280, 800);
        Library& library = open.session.library();
        wedding = library.weddings().find(open.example.wedding).value();
        wedding.ready_by = "12:30";
        ada = library.clients().add(client_called("Ada Lindqvist"));
        wedding.party = {{bride, "bride"}, {ada, "bridesmaid"}};
        library.weddings().change(wedding);
        Morning morning;
        morning.stylists.resize(2);
        wish_of(morning, bride).work = ChairWork{30, 15, 60, 40};
        wish_of(morning, ada).work = ChairWork{45, 0, 0, 0};
        library.mornings().save(wedding.id, morning);
        show();
    }

    void show() {
        screen.refresh();
        show_active(screen);
        EXPECT_TRUE(QTest::qWaitFor([this] { return !says("Planning"); }));
        show_active(screen);
    }

    Morning kept() { return open.session.library().mornings().of(wedding.id); }

    SeatBar* bar(ClientId client, SeatPart part) {
        for (SeatBar* found : screen.findChildren<SeatBar*>()) {
            const Seat& seat = found->seat();
            if (found->isVisible() && seat.client == client && seat.part == part) return found;
        }
        return nullptr;
    }

    bool says(const QString& words) {
        for (const auto* label : screen.findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(words)) return true;
        }
        return false;
    }

    QString consequences() {
        return screen.findChild<Sentences*>()->said().join(QLatin1Char('\n'));
    }

    // px of so many minutes in the chart, told from a bar's own width.
    int px(int minutes) {
        const SeatBar* own = bar(ada, SeatPart::set);
        return minutes * own->width() / (own->seat().ends - own->seat().begins);
    }

    void take_hold(SeatBar* held, const QPoint& by) {
        QTest::mousePress(held, Qt::LeftButton, {}, {8, 8});
        for (const int share : {1, 2}) {
            const QPoint to = held_at(held) + QPoint(8, 8) + by * share / 2;
            QTest::mouseMove(held, held->mapFromGlobal(to));
        }
    }
    QPoint held_at(SeatBar* held) {
        if (start.isNull()) start = held->mapToGlobal(QPoint());
        return start;
    }
    void let_go(SeatBar* held) {
        QTest::mouseRelease(held, Qt::LeftButton, {}, {8, 8});
        start = {};
    }

    QPushButton* button(const QString& text) {
        for (auto* found : screen.findChildren<QPushButton*>()) {
            if (found->text() == text) return found;
        }
        return nullptr;
    }

    OpenSession open;
    const ClientId bride = open.example.mira;
    ClientId ada;
    Wedding wedding;
    RunningOrderScreen screen{open.session};
    QPoint start;
};

}  // namespace quarterturn
