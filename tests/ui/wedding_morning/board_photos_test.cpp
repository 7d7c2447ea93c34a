#include <QScrollArea>
#include <QScrollBar>

#include "tests/ui/wedding_morning/board_fixture.h"
#include "ui/shell/moments_row.h"
#include "ui/theme/theme.h"
#include "ui/wedding_morning/client_tile.h"
#include "ui/wedding_morning/enlarged_photo.h"

namespace quarterturn {
namespace {

TEST_F(BoardTest, PhotosStandAsOnTheHeadPlan) {
    const auto middle = [&](Angle angle) { return photo(angle)->geometry().center(); };
    EXPECT_LT(middle(Angle::front).y(), middle(Angle::left).y());
    EXPECT_GT(middle(Angle::back).y(), middle(Angle::left).y());
    EXPECT_LT(middle(Angle::left).x(), middle(Angle::front).x());
    EXPECT_GT(middle(Angle::right).x(), middle(Angle::front).x());
}

TEST_F(BoardTest, APhotoIsEnlargedAndArrowsWalkRoundTheHead) {
    photo(Angle::front)->setFocus();
    press(Qt::Key_Return);
    const auto enlarged = [&] { return seen<EnlargedPhoto>(); };
    ASSERT_EQ(enlarged().size(), 1);
    EXPECT_GE(enlarged().front()->height(), board().height() * 9 / 10);
    const auto angle = [&] { return enlarged().front()->shown_photo()->angle; };
    EXPECT_EQ(angle(), Angle::front);
    press(Qt::Key_Left);
    EXPECT_EQ(angle(), Angle::left);
    press(Qt::Key_Down);
    EXPECT_EQ(angle(), Angle::back);
    press(Qt::Key_Right);
    EXPECT_EQ(angle(), Angle::back) << "there is no photo of her right";
    press(Qt::Key_Up);
    EXPECT_EQ(angle(), Angle::front);
    EXPECT_EQ(problems_with(*window), QStringList());
    EXPECT_EQ(targets_too_small(board(), morning_target), QStringList());
    press(Qt::Key_Escape);
    EXPECT_TRUE(enlarged().isEmpty());
    EXPECT_TRUE(photo(Angle::front)->hasFocus());
}

TEST_F(BoardTest, AnEmptyFrameSaysWhatIsMissingAndLeadsThere) {
    BoardPhoto* gap = photo(Angle::right);
    EXPECT_TRUE(gap->accessibleName().contains(QStringLiteral("No after photo of the right")));
    QTest::mouseClick(gap, Qt::LeftButton);
    EXPECT_EQ(window->moment(), Moment::round_the_head);
    EXPECT_EQ(other(Moment::round_the_head)->arrived->shot, (Shot{Stage::after, Angle::right}));
}

double lightness(BoardPhoto* photo) {
    const QImage painted = photo->grab().toImage().scaled(8, 8).scaled(1, 1);
    return qGray(painted.pixel(0, 0));
}

TEST_F(BoardTest, PhotosAreDimOnADimBoardUntilTheyAreWantedBright) {
    QImage white(300, 400, QImage::Format_RGB32);
    white.fill(Qt::white);
    photo(Angle::front)->show_picture(white, false);
    const double bright = lightness(photo(Angle::front));
    photo(Angle::front)->show_picture(white, true);
    EXPECT_LT(lightness(photo(Angle::front)), 0.7 * bright);
    EXPECT_EQ(button(QStringLiteral("Photos bright")), nullptr);
    press(Qt::Key_D);
    EXPECT_TRUE(photo(Angle::front)->is_veiled());
    ASSERT_NE(button(QStringLiteral("Photos bright")), nullptr);
    press(Qt::Key_B);
    EXPECT_FALSE(photo(Angle::front)->is_veiled());
    QTest::mouseClick(button(QStringLiteral("Photos dim")), Qt::LeftButton);
    EXPECT_TRUE(photo(Angle::front)->is_veiled());
    press(Qt::Key_D);
    EXPECT_FALSE(photo(Angle::front)->is_veiled());
}

TEST_F(BoardTest, PhotosAreLargeOnALaptop) {
    press(Qt::Key_F11);
    window->resize(1280, 800);
    show_active(*window);
    for (const Angle angle : quarter_angles) {
        EXPECT_GE(photo(angle)->height(), 260) << word(angle);
    }
}

}  // namespace
}  // namespace quarterturn
