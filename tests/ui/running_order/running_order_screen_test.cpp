// pdfinfo and pdftotext are Poppler's.

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
namespace {

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

TEST_F(RunningOrderScreenTest, ShowsTheBestPlanWithNamesForThoseWhoCannotSeeIt) {
    EXPECT_TRUE(says("All can be ready in time."));
    EXPECT_TRUE(says("Nobody is late, and every rule is kept."));
    const SeatBar* set = bar(bride, SeatPart::set);
    ASSERT_NE(set, nullptr);
    EXPECT_EQ(set->accessibleName(),
              QStringLiteral("Mira Okonjo-Lindqvist, set, stylist %1, 11:05 to 11:35")
                  .arg(set->seat().stylist + 1));
    EXPECT_EQ(bar(bride, SeatPart::finish)->seat().ends, 12 * 60 + 30);
    EXPECT_FALSE(button(QStringLiteral("Plan it anew"))->isEnabled());
}

TEST_F(RunningOrderScreenTest, WhatIsMissingIsSaidAndGivenRightThere) {
    const ClientId aunt = open.session.library().clients().add(client_called("Aud Vale"));
    wedding.party = {{aunt, "aunt"}};
    wedding.ready_by.clear();
    open.session.library().weddings().change(wedding);
    open.session.touch();
    screen.refresh();
    EXPECT_TRUE(says("Nobody can be planned yet. This is missing:"));
    auto* gaps = screen.findChild<GapsPart*>();
    EXPECT_EQ(gaps->findChildren<SentenceLink*>().size(), 2);
    auto* minutes = gaps->findChild<QSpinBox*>();
    ASSERT_NE(minutes, nullptr);
    minutes->setValue(35);
    QTest::mouseClick(button(QStringLiteral("Plan with these minutes")), Qt::LeftButton);
    screen.refresh();
    auto* time = gaps->findChild<TimeWords*>();
    ASSERT_NE(time, nullptr);
    QTest::keyClicks(time, QStringLiteral("12:00"));
    QTest::keyClick(time, Qt::Key_Return);
    screen.refresh();
    ASSERT_TRUE(QTest::qWaitFor([&] { return bar(aunt, SeatPart::set) != nullptr; }));
    EXPECT_EQ(bar(aunt, SeatPart::set)->seat().begins, 11 * 60 + 25);
    EXPECT_FALSE(gaps->isVisible());
    open.session.undo();
    open.session.undo();
    screen.refresh();
    EXPECT_TRUE(says("Nobody can be planned yet"));
}

TEST_F(RunningOrderScreenTest, AnEmptyPartyIsSaidWithTheWayToAddIt) {
    wedding.party.clear();
    open.session.library().weddings().change(wedding);
    open.session.touch();
    screen.refresh();
    EXPECT_TRUE(says("Nobody is in the party yet"));
    ASSERT_NE(button(QStringLiteral("Add the party")), nullptr);
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST_F(RunningOrderScreenTest, SaysWhatFollowsWhileABarIsDraggedAndKeepsItWhenLetGo) {
    SeatBar* hair = bar(ada, SeatPart::set);
    const int begins = hair->seat().begins;
    take_hold(hair, {px(20), 0});
    EXPECT_TRUE(says("If you let go here"));
    EXPECT_TRUE(consequences().contains(QStringLiteral("minutes late.")))
        << consequences().toStdString();
    EXPECT_TRUE(kept().kept.empty());  // nothing is kept yet
    let_go(hair);
    ASSERT_EQ(kept().kept.size(), 3U);
    const Seat moved_to = bar(ada, SeatPart::set)->seat();
    EXPECT_EQ(moved_to.begins % 5, 0);
    EXPECT_NEAR(moved_to.begins, begins + 20, 5);
    EXPECT_TRUE(says("As you changed it"));
    open.session.undo();
    EXPECT_TRUE(kept().kept.empty());
    EXPECT_EQ(bar(ada, SeatPart::set)->seat().begins, begins);
    open.session.redo();
    EXPECT_EQ(bar(ada, SeatPart::set)->seat().begins, moved_to.begins);
}

TEST_F(RunningOrderScreenTest, ABarIsDraggedToAnotherStylistAndTellsWhoIsThereTwice) {
    SeatBar* hair = bar(ada, SeatPart::set);
    const int lane = bar(bride, SeatPart::set)->y() - hair->y();
    ASSERT_NE(lane, 0);
    take_hold(hair, {0, lane});
    EXPECT_TRUE(consequences().contains(QStringLiteral("two at once")));
    let_go(hair);
    EXPECT_EQ(bar(ada, SeatPart::set)->seat().stylist, bar(bride, SeatPart::set)->seat().stylist);
    EXPECT_TRUE(consequences().contains(QStringLiteral("two at once")));
}

TEST_F(RunningOrderScreenTest, AFinishMovesAloneAndTellsASetThatIsLeftTooLong) {
    const int set = bar(bride, SeatPart::set)->seat().begins;
    SeatBar* finish = bar(bride, SeatPart::finish);
    take_hold(finish, {px(50), 0});
    EXPECT_TRUE(consequences().contains(QStringLiteral("may be left for 60 minutes at most")));
    let_go(finish);
    EXPECT_EQ(bar(bride, SeatPart::set)->seat().begins, set);
}

TEST_F(RunningOrderScreenTest, EscapeGivesADragUp) {
    SeatBar* hair = bar(ada, SeatPart::set);
    const int begins = hair->seat().begins;
    take_hold(hair, {px(20), 0});
    QTest::keyClick(hair, Qt::Key_Escape);
    EXPECT_EQ(hair->seat().begins, begins);
    EXPECT_TRUE(says("As it is planned"));
    let_go(hair);
    EXPECT_TRUE(kept().kept.empty());
}

TEST_F(RunningOrderScreenTest, KeysMoveABarAndTheKeyboardStaysThere) {
    SeatBar* hair = bar(ada, SeatPart::set);
    const int begins = hair->seat().begins;
    const int stylist = hair->seat().stylist;
    hair->setFocus();
    QTest::keyClick(hair, Qt::Key_Left);
    EXPECT_EQ(hair->seat().begins, begins - 5);
    QTest::keyClick(hair, Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(hair->seat().begins, begins - 4);
    QTest::keyClick(hair, stylist == 0 ? Qt::Key_Down : Qt::Key_Up);
    EXPECT_EQ(hair->seat().stylist, 1 - stylist);
    EXPECT_TRUE(hair->hasFocus());
    EXPECT_EQ(kept().kept.size(), 3U);
    for (int i = 0; i < 3; ++i) open.session.undo();
    EXPECT_TRUE(kept().kept.empty());
}

TEST_F(RunningOrderScreenTest, PlanItAnewReturnsToTheBestPlan) {
    SeatBar* hair = bar(ada, SeatPart::set);
    const int begins = hair->seat().begins;
    QTest::keyClick(hair, Qt::Key_Left);
    QTest::mouseClick(button(QStringLiteral("Plan it anew")), Qt::LeftButton);
    EXPECT_EQ(bar(ada, SeatPart::set)->seat().begins, begins);
    EXPECT_TRUE(says("As it is planned"));
    open.session.undo();
    EXPECT_EQ(bar(ada, SeatPart::set)->seat().begins, begins - 5);
}

TEST_F(RunningOrderScreenTest, WishesChangeThePlanAndAreUndone) {
    auto* stylists = screen.findChild<QSpinBox*>();
    ASSERT_EQ(stylists->accessibleName(), QStringLiteral("Number of stylists"));
    stylists->setValue(1);
    EXPECT_EQ(kept().stylists.size(), 1U);
    ASSERT_TRUE(QTest::qWaitFor([this] { return says("As it is planned"); }));
    EXPECT_EQ(bar(bride, SeatPart::set)->seat().stylist, 0);
    EXPECT_EQ(bar(ada, SeatPart::set)->seat().stylist, 0);
    open.session.undo();
    EXPECT_EQ(kept().stylists.size(), 2U);
}

TEST_F(RunningOrderScreenTest, TakesATimeOfHersAndSaysWhichIsNone) {
    TimeWords* ready_by = nullptr;
    for (auto* field : screen.findChildren<TimeWords*>()) {
        if (field->accessibleName() == QStringLiteral("Ready by")) ready_by = field;
    }
    ASSERT_NE(ready_by, nullptr);
    EXPECT_EQ(ready_by->placeholderText(), QStringLiteral("12:30"));
    ready_by->setFocus();
    QTest::keyClicks(ready_by, QStringLiteral("half past"));
    QTest::keyClick(ready_by, Qt::Key_Return);
    EXPECT_TRUE(says("is no time of day"));
    ready_by->clear();
    QTest::keyClicks(ready_by, QStringLiteral("6:30"));
    QTest::keyClick(ready_by, Qt::Key_Return);
    EXPECT_FALSE(says("is no time of day"));
    ASSERT_TRUE(QTest::qWaitFor([this] { return says("▲  Not all can be ready in time"); }));
    EXPECT_TRUE(consequences().contains(QStringLiteral("Mira Okonjo-Lindqvist is ready at")));
    open.session.undo();
    EXPECT_TRUE(QTest::qWaitFor([this] { return says("All can be ready in time."); }));
    EXPECT_EQ(ready_by->text(), QString());
}

TEST_F(RunningOrderScreenTest, AClientWithoutMinutesIsNamedWithTheWayToHerRecipe) {
    Morning morning = kept();
    wish_of(morning, bride).work.reset();
    open.session.library().mornings().save(wedding.id, morning);
    show();
    std::optional<Place> asked;
    QObject::connect(&open.session, &Session::asked_for, &screen,
                     [&](const Place& place) { asked = place; });
    SentenceLink* link = nullptr;
    for (auto* found : screen.findChildren<SentenceLink*>()) {
        if (found->isVisible() && found->text().contains(QStringLiteral("minutes yet")))
            link = found;
    }
    ASSERT_NE(link, nullptr);
    QTest::mouseClick(link, Qt::LeftButton);
    ASSERT_TRUE(asked.has_value());
    EXPECT_EQ(asked->moment, Moment::recipe);
    EXPECT_EQ(asked->look, open.example.look);
    EXPECT_EQ(bar(bride, SeatPart::set), nullptr);
}

TEST_F(RunningOrderScreenTest, SavesThePlanAsAPage) {
    const Path file = open.example.folder / "order.pdf";
    screen.save_to(file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return says("Saved:"); }));
    const std::string text =
        output_of("pdfinfo " + file.string() + "; pdftotext -layout " + file.string() + " -");
    for (const char* words : {"Running order", "11:05 to 11:35", "Ada Lindqvist", "Stylist 2"}) {
        EXPECT_NE(text.find(words), std::string::npos) << words << " is not in\n" << text;
    }
}

TEST_F(RunningOrderScreenTest, HasNoProblemsAtAnySize) {
    Morning morning = kept();
    morning.stylists[0].breaks = {{660, 675}};
    wish_of(morning, ada).ready_by = 400;
    open.session.library().mornings().save(wedding.id, morning);
    show();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

TEST(RunningOrderScreen, TeachesWhereThereIsNoWedding) {
    TemporaryFolder folder;
    Library::create(folder / "empty");
    NoDecoder decoder;
    Session session{real_file_system(), decoder, [] { return at("2026-11-07T08:00:00"); }};
    session.open(folder / "empty");
    RunningOrderScreen screen(session);
    screen.refresh();
    EXPECT_EQ(problems_at_all_sizes(screen), QStringList());
}

}  // namespace
}  // namespace quarterturn
