// The window of two laid pictures: inside both, the head in it, and moved no further than need be.

#include "indexer/sheet/window_inside.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

namespace quarterturn {
namespace {

Similarity turned_about_middle(double degrees, double scale, double aspect) {
    const double angle = degrees * std::numbers::pi / 180;
    Similarity lay{scale * std::cos(angle), scale * std::sin(angle), 0, 0};
    const Spot middle{aspect / 2, 0.5};
    const Spot moved = lay(middle);
    lay.x = middle.x - moved.x;
    lay.y = middle.y - moved.y;
    return lay;
}

// By going back into each picture, corner by corner.
bool picture_holds(double aspect, const Similarity& lay, const Box& window, double within = 1e-6) {
    for (const double x : {window.x, window.x + window.width}) {
        for (const double y : {window.y, window.y + window.height}) {
            const Spot spot = lay.inverse()({x, y});
            if (spot.x < -within || spot.y < -within || spot.x > aspect + within ||
                spot.y > 1 + within) {
                return false;
            }
        }
    }
    return true;
}

bool in_both(const TwoLaid& two, const Box& window) {
    return picture_holds(two.first_aspect, {}, window) &&
           picture_holds(two.second_aspect, two.second_onto_first, window);
}

bool around(const Box& window, const Box& head) {
    constexpr double within = 1e-6;
    return head.x > window.x - within && head.y > window.y - within &&
           head.x + head.width < window.x + window.width + within &&
           head.y + head.height < window.y + window.height + within;
}

TEST(WindowInside, StaysWhereNoCornerIsEmpty) {
    const TwoLaid two{0.75, 0.75, {}};
    const Box wanted{0.1, 0.05, 0.56, 0.7};
    const auto inside = moved_inside(two, wanted, {0.2, 0.2, 0.3, 0.4});
    ASSERT_TRUE(inside);
    EXPECT_DOUBLE_EQ(inside->x, wanted.x);
    EXPECT_DOUBLE_EQ(inside->y, wanted.y);
}

TEST(WindowInside, IsMovedStraightToTheBorderItWasBeyond) {
    const TwoLaid two{0.75, 0.75, {1, 0, 0, 0.1}};
    const auto inside = moved_inside(two, {0.1, 0.02, 0.5, 0.6}, {0.2, 0.3, 0.3, 0.3});
    ASSERT_TRUE(inside);
    EXPECT_NEAR(inside->x, 0.1, 1e-9);
    EXPECT_NEAR(inside->y, 0.1, 1e-6);
}

TEST(WindowInside, CannotCutTheHead) {
    const TwoLaid two{0.75, 0.75, {1, 0, 0, 0.3}};
    EXPECT_FALSE(moved_inside(two, {0.1, 0.1, 0.5, 0.6}, {0.2, 0.2, 0.3, 0.3}));
}

RC_GTEST_PROP(WindowInsideAny, FillsItFromBothAndHoldsTheHeadWhereverAGridFindsAPlace, ()) {
    const auto share = [](int from, int to) { return *rc::gen::inRange(from, to) / 1000.0; };
    const TwoLaid two{
        share(600, 1400), share(600, 1400),
        turned_about_middle(share(-12000, 12000), share(700, 1600), share(600, 1400))};
    const double height = share(300, 950);
    const Box wanted{share(-300, 600), share(-300, 600), height * 0.8, height};
    const Box head{two.first_aspect / 2 - 0.1, share(100, 600), 0.2, 0.25};
    const auto inside = moved_inside(two, wanted, head);
    if (inside) {
        RC_ASSERT(in_both(two, *inside));
        RC_ASSERT(both_fill(two, *inside));
        RC_ASSERT(around(*inside, head));
    }
    const auto away = [&](double x, double y) { return std::hypot(x - wanted.x, y - wanted.y); };
    for (double x = -0.4; x < 1.4; x += 0.02) {
        for (double y = -0.4; y < 1.0; y += 0.02) {
            const Box other{x, y, wanted.width, wanted.height};
            if (!in_both(two, other) || !around(other, head)) continue;
            RC_ASSERT(inside.has_value());
            RC_ASSERT(away(inside->x, inside->y) <= away(x, y) + 1e-3);
        }
    }
}

}  // namespace
}  // namespace quarterturn
