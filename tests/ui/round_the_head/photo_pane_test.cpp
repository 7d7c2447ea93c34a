#include "ui/round_the_head/photo_pane.h"

#include <gtest/gtest.h>

#include <QTest>

#include "tests/ui/shell/fixture.h"
#include "tests/ui/support/screen_checks.h"
#include "ui/round_the_head/closer_part.h"

namespace quarterturn {
namespace {

// A chessboard of single pixels, black at (0, 0).
QImage chessboard(int side) {
    QImage image(side, side, QImage::Format_RGB32);
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x) {
            image.setPixel(x, y, (x + y) % 2 == 0 ? qRgb(0, 0, 0) : qRgb(255, 255, 255));
        }
    }
    return image;
}

TEST(PhotoPane, ShowsEachPixelOfThePhotoOnOneOfTheScreen) {
    PhotoPane pane;
    pane.resize(200, 200);
    pane.show_photo(chessboard(1000), {1000, 1000}, false);
    pane.look({{0.5, 0.5}, 1.0});
    show_active(pane);
    const QImage shown = pane.grab().toImage();
    const QPoint middle(shown.width() / 2, shown.height() / 2);
    for (int i = 0; i < 10; ++i) {
        const int one = qGray(shown.pixel(middle.x() + i, middle.y()));
        const int next = qGray(shown.pixel(middle.x() + i + 1, middle.y()));
        EXPECT_GT(std::abs(one - next), 200) << "pixels run into each other at " << i;
    }
}

TEST(PhotoPane, AMirroredPhotoIsTurned) {
    QImage picture(100, 100, QImage::Format_RGB32);
    picture.fill(Qt::white);
    for (int y = 0; y < 100; ++y) {
        for (int x = 0; x < 40; ++x) picture.setPixel(x, y, qRgb(0, 0, 0));
    }
    PhotoPane pane;
    pane.resize(200, 200);
    pane.show_photo(picture, {100, 100}, true);
    show_active(pane);
    const QImage shown = pane.grab().toImage();
    EXPECT_GT(qGray(shown.pixel(shown.width() / 8, shown.height() / 2)), 200);
    EXPECT_LT(qGray(shown.pixel(shown.width() * 7 / 8, shown.height() / 2)), 50);
}

TEST(PhotoPane, TwoSideBySideMoveTogether) {
    OpenSession open;
    CloserPart part(open.session);
    part.resize(1000, 600);
    part.show_photos({example_photo("one.jpg"), example_photo("two.jpg")}, true);
    show_active(part);
    const auto panes = part.findChildren<PhotoPane*>();
    ASSERT_EQ(panes.size(), 2);
    QTest::keyClick(panes[0], Qt::Key_Plus);
    QTest::keyClick(panes[0], Qt::Key_Right);
    EXPECT_GT(panes[0]->closeness().middle.x(), 0.5);
    EXPECT_EQ(panes[0]->closeness(), panes[1]->closeness());
    EXPECT_EQ(problems_with(part), QStringList());
}

}  // namespace
}  // namespace quarterturn
