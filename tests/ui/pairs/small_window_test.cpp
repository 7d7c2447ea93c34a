#include "tests/ui/pairs/pairs_fixture.h"
#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

struct LargestText {
    LargestText() { apply_theme(*qApp, {.text_size = TextSize::largest}); }
    ~LargestText() { apply_theme(*qApp, {}); }
};

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

}  // namespace
}  // namespace quarterturn
