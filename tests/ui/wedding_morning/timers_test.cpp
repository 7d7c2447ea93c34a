#include <QCheckBox>
#include <QLineEdit>
#include <QSignalSpy>

#include "tests/ui/wedding_morning/board_fixture.h"

namespace quarterturn {
namespace {

class BoardTimersTest : public BoardTest {
  protected:
    void start_cooling() {
        QTest::mouseClick(button(QStringLiteral("Start 15 min: cooling")), Qt::LeftButton);
    }
    void pass(std::int64_t seconds) {
        now += seconds;
        board().timers().look();
    }
    QStringList times() {
        QStringList times;
        for (const TimerPill* pill : seen<TimerPill>()) times << pill->time_said();
        return times;
    }
    std::vector<Timer> kept() {
        return open.session.library().boards().timers(open.example.wedding);
    }
};

TEST_F(BoardTimersTest, AStepStartsItsWaitWhichStaysInViewOnEveryClient) {
    start_cooling();
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept().front().name, "Mira: cooling");
    EXPECT_EQ(times(), QStringList{QStringLiteral("15:00")});
    pass(61);
    EXPECT_EQ(times(), QStringList{QStringLiteral("13:59")});
    press(Qt::Key_PageDown);
    press(Qt::Key_PageDown);
    EXPECT_EQ(times(), QStringList{QStringLiteral("13:59")});
    open.session.undo();
    EXPECT_TRUE(times().isEmpty());
    EXPECT_TRUE(kept().empty());
}

TEST_F(BoardTimersTest, TheLastMinuteSaysSoAndTheEndSoundsOnce) {
    start_cooling();
    pass(14 * 60 + 5);
    EXPECT_EQ(times(), QStringList{QStringLiteral("last minute, 0:55")});
    EXPECT_EQ(bell->rung, 0);
    pass(55);
    EXPECT_EQ(times(), QStringList{QStringLiteral("time is up")});
    EXPECT_EQ(bell->rung, 1);
    pass(125);
    EXPECT_EQ(times(), QStringList{QStringLiteral("2 min over")});
    EXPECT_EQ(bell->rung, 1);
    QTest::mouseClick(button(QStringLiteral("Seen")), Qt::LeftButton);
    EXPECT_TRUE(times().isEmpty());
    EXPECT_TRUE(kept().empty());
    open.session.undo();
    EXPECT_EQ(times(), QStringList{QStringLiteral("2 min over")});
    EXPECT_EQ(bell->rung, 1);
}

TEST_F(BoardTimersTest, RunsOnWhileTheProgramIsClosed) {
    start_cooling();
    window.reset();
    now += 20 * 60;
    make_window();
    go_to(open.example.mira);
    EXPECT_EQ(times(), QStringList{QStringLiteral("5 min over")});
    EXPECT_EQ(bell->rung, 1);
}

TEST_F(BoardTimersTest, ShowsATimerThatAnotherProgramStarted) {
    Library other = Library::open(open.session.library().folder());
    other.boards().start({{}, open.example.wedding, "tea", now, now + 240});
    open.session.touch();
    EXPECT_EQ(times(), QStringList{QStringLiteral("4:00")});
}

TEST_F(BoardTimersTest, HasOneOfHerOwnWithANameAndMinutes) {
    press(Qt::Key_T);
    auto* name = seen<QLineEdit>().front();
    EXPECT_TRUE(name->hasFocus());
    EXPECT_EQ(problems_with(*window), QStringList());
    name->setFocus();
    press(Qt::Key_Return);
    EXPECT_TRUE(says(QStringLiteral("Name what the timer is for.")));
    QTest::keyClicks(name, QStringLiteral("veil steams"));
    press(Qt::Key_Return);
    ASSERT_EQ(kept().size(), 1U);
    EXPECT_EQ(kept().front().name, "veil steams");
    EXPECT_EQ(times(), QStringList{QStringLiteral("15:00")});
}

TEST_F(BoardTimersTest, FlashesOrStandsStillAsSheWishes) {
    start_cooling();
    pass(15 * 60);
    std::vector<bool> filled;
    for (int i = 0; i < 4; ++i) {
        pass(0);
        filled.push_back(seen<TimerPill>().front()->filled());
    }
    EXPECT_NE(filled[0], filled[1]);
    EXPECT_EQ(filled[0], filled[2]);
    // WCAG 2.2, 2.3.1: no more than three flashes in a second.
    EXPECT_LE(1000 / (2 * TimerWatch::half_a_flash), 3);
    remember(TimerWishes{true, false});
    for (int i = 0; i < 3; ++i) {
        pass(0);
        EXPECT_TRUE(seen<TimerPill>().front()->filled());
    }
}

TEST_F(BoardTimersTest, IsSilentWhenSheWishes) {
    press(Qt::Key_T);
    for (QCheckBox* wish : seen<QCheckBox>()) {
        if (wish->text().contains(QStringLiteral("sound"))) wish->click();
    }
    press(Qt::Key_Escape);
    start_cooling();
    pass(15 * 60);
    EXPECT_EQ(times(), QStringList{QStringLiteral("time is up")});
    EXPECT_EQ(bell->rung, 0);
}

TEST_F(BoardTimersTest, SaysWithTheFirstTimerThatNoSoundCanBePlayed) {
    start_cooling();
    EXPECT_FALSE(says(QStringLiteral("No sound can be played here")));
    bell->heard = false;
    make_window();
    go_to(open.example.mira);
    QTest::mouseClick(button(QStringLiteral("Stop")), Qt::LeftButton);
    EXPECT_FALSE(says(QStringLiteral("No sound can be played here")));
    start_cooling();
    EXPECT_TRUE(says(QStringLiteral("No sound can be played here")));
}

TEST_F(BoardTimersTest, TheNameOfATimerStandsApartFromItsDial) {
    start_cooling();
    const TimerPill& pill = *seen<TimerPill>().front();
    const auto* name = pill.findChild<QLabel*>();
    const QImage picture = seen<TimerPill>().front()->grab().toImage();
    const qreal pixels = picture.devicePixelRatio();
    const int middle = picture.height() / 2;
    const int start = qRound(name->x() * pixels);
    for (int x = start - qRound(3 * pixels); x < start; ++x) {
        EXPECT_EQ(picture.pixel(x, middle), picture.pixel(start - 1, middle));
    }
}

TEST_F(BoardTimersTest, TellsTheEndAlsoOnAnotherScreen) {
    start_cooling();
    window->go_to({.moment = Moment::coming_up});
    QSignalSpy said(&open.session, &Session::said);
    pass(15 * 60);
    EXPECT_EQ(bell->rung, 1);
    ASSERT_EQ(said.count(), 1);
    EXPECT_TRUE(said.front().front().toString().contains(QStringLiteral("Mira: cooling")));
}

TEST_F(BoardTimersTest, ManyTimersHaveNoProblems) {
    Library& library = open.session.library();
    for (const auto& [name, left] : std::initializer_list<std::pair<const char*, int>>{
             {"Mira: cooling", 700},
             {"Wilhelmina Aleksandra: waiting for the second set", 40},
             {"tea", -10},
             {"زيت", -200}}) {
        library.boards().start({{}, open.example.wedding, name, now - 60, now + left});
    }
    open.session.touch();
    EXPECT_EQ(problems_at_all_sizes(*window), QStringList());
    EXPECT_EQ(targets_too_small(board(), morning_target), QStringList());
}

}  // namespace
}  // namespace quarterturn
