#include "ui/widgets/head_plan.h"

#include <QAccessible>
#include <QDropEvent>
#include <QMimeData>
#include <QSignalSpy>
#include <QTest>

#include "tests/ui/support/largest_text.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/theme/theme.h"
#include "ui/widgets/photo_tile.h"

namespace quarterturn {
namespace {

class HeadPlanTest : public testing::Test {
  protected:
    HeadPlanTest() { plan.resize(800, 560); }

    QPoint middle(Angle angle) const { return plan.place(angle)->geometry().center(); }
    QString name(Angle angle) const {
        return QAccessible::queryAccessibleInterface(plan.place(angle))->text(QAccessible::Name);
    }

    HeadPlan plan;
};

// words.md: front at the top, back at the bottom, the client's left on the left.
TEST_F(HeadPlanTest, LiesAsSheStandsBehindTheChair) {
    plan.show();
    const QPoint centre = plan.rect().center();
    EXPECT_LT(middle(Angle::front).y(), centre.y());
    EXPECT_GT(middle(Angle::back).y(), centre.y());
    EXPECT_LT(middle(Angle::left).x(), centre.x());
    EXPECT_GT(middle(Angle::right).x(), centre.x());
    EXPECT_LT(middle(Angle::left_three_quarter).x(), middle(Angle::front).x());
    EXPECT_LT(middle(Angle::left_three_quarter).y(), middle(Angle::left).y());
    EXPECT_LT((middle(Angle::crown) - centre).manhattanLength(), 4);
}

TEST(SmallHeadPlan, TheCrownIsReadWhole) {
    const LargestText largest;
    HeadPlan plan;
    plan.resize(plan.minimumSizeHint());
    plan.show();
    const PlanPlace* crown = plan.place(Angle::crown);
    const QMargins around(6, 0, 6, 0);
    EXPECT_GE(crown->rect().marginsRemoved(around).width(),
              crown->fontMetrics().horizontalAdvance(QStringLiteral("crown")));
}

TEST_F(HeadPlanTest, LeftStaysLeftWhereTextRunsFromRightToLeft) {
    plan.setLayoutDirection(Qt::RightToLeft);
    plan.show();
    EXPECT_LT(middle(Angle::left).x(), middle(Angle::right).x());
}

TEST_F(HeadPlanTest, AClickOnAQuarterOfTheRingChoosesItsAngle) {
    plan.show();
    QSignalSpy chosen(&plan, &HeadPlan::chosen);
    const QPoint centre = plan.rect().center();
    const int ring = static_cast<int>(plan.height() * 0.39 * 0.41);
    const std::array<std::pair<QPoint, Angle>, 4> clicks{{{{0, -ring}, Angle::front},
                                                          {{0, ring}, Angle::back},
                                                          {{-ring, 0}, Angle::left},
                                                          {{ring, 0}, Angle::right}}};
    for (const auto& [offset, angle] : clicks) {
        QTest::mouseClick(&plan, Qt::LeftButton, {}, centre + offset);
        ASSERT_FALSE(chosen.isEmpty());
        EXPECT_EQ(chosen.takeLast().front().value<Angle>(), angle);
    }
}

TEST_F(HeadPlanTest, APlaceIsPressedFromTheKeyboardAndLeavesTheArrowsAlone) {
    show_active(plan);
    QSignalSpy chosen(&plan, &HeadPlan::chosen);
    plan.place(Angle::left)->setFocus();
    QTest::keyClick(plan.place(Angle::left), Qt::Key_Return);
    ASSERT_EQ(chosen.size(), 1);
    EXPECT_EQ(chosen.front().front().value<Angle>(), Angle::left);
    QKeyEvent arrow(QEvent::KeyPress, Qt::Key_Up, Qt::NoModifier);
    arrow.accept();
    QApplication::sendEvent(plan.place(Angle::left), &arrow);
    EXPECT_EQ(chosen.size(), 1);
    EXPECT_TRUE(plan.place(Angle::left)->hasFocus());
}

TEST_F(HeadPlanTest, SaysInWordsHowEachPlaceStands) {
    PlanPlaceState state;
    state.verdict = Coverage::weak;
    state.has_photo = true;
    state.photo.flaws = {QStringLiteral("out of focus")};
    state.photo.mirrored = true;
    plan.show_place(Angle::left, state);
    EXPECT_EQ(name(Angle::left).toStdString(), "left, weak, out of focus, mirrored, turned");
    plan.show_place(Angle::crown, {.verdict = Coverage::missing, .need = Need::nice_to_have});
    EXPECT_EQ(name(Angle::crown).toStdString(), "crown, nice to have");
    plan.show_ring({Quarter::covered, Quarter::missing, Quarter::weak, Quarter::waived});
    EXPECT_EQ(plan.accessibleName().toStdString(),
              "The head from above: left covered, front missing, right weak, back waived");
}

TEST_F(HeadPlanTest, TheFrameOfASuggestedPlaceLeavesItsWordsAlone) {
    show_active(plan);
    PlanPlaceState state;
    state.verdict = Coverage::covered;
    state.has_photo = true;
    const auto pictures = [&](bool suggested) {
        state.suggested = suggested;
        plan.show_place(Angle::back, state);
        return plan.place(Angle::back)->grab().toImage();
    };
    const QImage plain = pictures(false);
    const QImage framed = pictures(true);
    EXPECT_NE(framed, plain);
    const int words = caption_height(plan.place(Angle::back)->font());
    const int height = qRound(words * plain.devicePixelRatio());
    const QRect below(0, plain.height() - height, plain.width(), height);
    EXPECT_EQ(framed.copy(below), plain.copy(below));
}

TEST_F(HeadPlanTest, TakesDroppedPhotos) {
    plan.show();
    QSignalSpy dropped(&plan, &HeadPlan::dropped);
    const std::unique_ptr<QMimeData> photos(carry_photos({PhotoId{3}, PhotoId{8}}));
    QDragEnterEvent enter({5, 5}, Qt::MoveAction, photos.get(), Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(plan.place(Angle::back), &enter);
    QDropEvent drop({5, 5}, Qt::MoveAction, photos.get(), Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(plan.place(Angle::back), &drop);
    ASSERT_EQ(dropped.size(), 1);
    EXPECT_EQ(dropped.front()[0].value<Angle>(), Angle::back);
    EXPECT_EQ(dropped.front()[1].value<std::vector<PhotoId>>(),
              (std::vector{PhotoId{3}, PhotoId{8}}));
}

TEST_F(HeadPlanTest, HasNoScreenProblems) {
    EXPECT_EQ(problems_with(plan), QStringList());
    plan.resize(plan.minimumSizeHint());
    EXPECT_EQ(problems_with(plan), QStringList());
}

}  // namespace
}  // namespace quarterturn
