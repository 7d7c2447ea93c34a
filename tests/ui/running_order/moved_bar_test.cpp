// Bars of the plan moved by the mouse and by keys.

#include "tests/ui/running_order/running_order_fixture.h"

namespace quarterturn {
namespace {

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

}  // namespace
}  // namespace quarterturn
