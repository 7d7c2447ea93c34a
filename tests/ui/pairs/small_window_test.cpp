#include <QScrollBar>

#include "tests/ui/pairs/pairs_fixture.h"
#include "tests/ui/support/largest_text.h"

namespace quarterturn {
namespace {

// Before the screen is made.
class LargestTextPairsTest : LargestText, public PairsScreenTest {};

TEST_F(LargestTextPairsTest, EveryPageFitsIntoASmallWindow) {
    constexpr QSize room(1024, 570);  // below the row of moments
    add_pairs();
    show();
    const auto least = [&] {
        screen.resize(room);
        QApplication::processEvents();
        return screen.size();
    };
    EXPECT_EQ(least(), room);
    click(QStringLiteral("Pictures from clients"));
    EXPECT_EQ(least(), room);
    press(Qt::Key_Escape);
    open_pair(0);
    EXPECT_EQ(least(), room);
    click(QStringLiteral("One picture of both"));
    EXPECT_EQ(least(), room);
    press(Qt::Key_Escape);
    press(Qt::Key_F11);
    screen.stand_alone(true);
    EXPECT_EQ(least(), room);
}

TEST_F(LargestTextPairsTest, TheSearchFieldHoldsWhatItAsksFor) {
    add_pairs();
    show();
    screen.resize(1024, 570);
    show_active(screen);
    const auto* field = showing<QLineEdit>(screen, QString());
    EXPECT_GE(field->width(), field->fontMetrics().horizontalAdvance(field->placeholderText()));
    EXPECT_EQ(problems_with(screen), QStringList());
}

TEST_F(PairsScreenTest, WhereNothingScrollsNoBarSaysSo) {
    add_pairs();
    screen.resize(1280, 2400);
    show();
    QScrollBar* bar = wall().verticalScrollBar();
    ASSERT_EQ(bar->maximum(), 0);
    const QImage painted = bar->grab().toImage();
    for (int y = 0; y < painted.height(); ++y) {
        ASSERT_EQ(painted.pixel(painted.width() / 2, y), painted.pixel(0, 0)) << y;
    }
}

}  // namespace
}  // namespace quarterturn
