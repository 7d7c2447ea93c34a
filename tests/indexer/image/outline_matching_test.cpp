#include "indexer/image/outline_matching.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace quarterturn {
namespace {

constexpr double radius = 0.2;  // of the head, in heights of the picture
constexpr Spot middle{0.4, 0.35};

// A round head above shoulders that fall off ever more steeply; `thicker`: hair, as a share of the
// head's width, more at the sides.
HeadOutline drawn(double thicker = 0) {
    HeadOutline outline;
    outline.width = 2 * radius;
    for (int degrees = -74; degrees <= 74; ++degrees) {
        const double angle = degrees * std::numbers::pi / 180;
        const Spot out{std::sin(angle), -std::cos(angle)};
        const double far = radius + outline.width * thicker * (1 + 2 * out.x * out.x);
        outline.top.push_back({{middle.x + far * out.x, middle.y + far * out.y}, out});
    }
    for (int i = 0; i < 60; ++i) {
        const double away = 0.13 + 0.004 * (59 - i);
        const double slope = 0.15 + 2.5 * away * away;
        const double y = 0.68 + 0.15 * away + 2.5 / 3 * away * away * away;
        const double length = std::hypot(1, slope);
        outline.shoulders[0].push_back({{middle.x - away, y}, {-slope / length, -1 / length}});
        outline.shoulders[1].push_back({{middle.x + away, y}, {slope / length, -1 / length}});
    }
    std::ranges::reverse(outline.shoulders[1]);
    return outline;
}

OutlinePart moved(OutlinePart part, const Similarity& by) {
    for (OutlinePoint& point : part) {
        const Spot out = point.outwards;
        point.at = by(point.at);
        point.outwards = {(by.along * out.x - by.across * out.y) / by.scale(),
                          (by.across * out.x + by.along * out.y) / by.scale()};
    }
    return part;
}

HeadOutline moved(HeadOutline outline, const Similarity& by) {
    outline.width *= by.scale();
    outline.top = moved(outline.top, by);
    for (OutlinePart& shoulder : outline.shoulders) shoulder = moved(shoulder, by);
    return outline;
}

Similarity any_framing() {
    const double scale = *rc::gen::inRange(75, 130) * 0.01;
    const double turn = *rc::gen::inRange(-40, 41) * 0.001;
    return {scale * std::cos(turn), scale * std::sin(turn), *rc::gen::inRange(-10, 10) * 0.01,
            *rc::gen::inRange(-10, 10) * 0.01};
}

RC_GTEST_PROP(LayOutlines, FindsHowTheSecondWasFramed, ()) {
    const Similarity framing = any_framing();
    const auto lay = lay_outlines(drawn(), moved(drawn(), framing));
    RC_ASSERT(lay.has_value());
    RC_ASSERT(std::abs(lay->scale() * framing.scale() - 1) < 0.005);
    RC_ASSERT(std::abs(lay->turn() + framing.turn()) < 0.01);
    RC_ASSERT(distance((*lay)(framing(middle)), middle) < 0.01 * radius);
}

RC_GTEST_PROP(LayOutlines, IsHardlyMisledByThickerHair, ()) {
    const Similarity framing = any_framing();
    const double thicker = *rc::gen::inRange(-20, 30) * 0.001;
    const auto lay = lay_outlines(drawn(), moved(drawn(thicker), framing));
    RC_ASSERT(lay.has_value());
    RC_ASSERT(std::abs(lay->scale() * framing.scale() - 1) < 0.03);
    RC_ASSERT(distance((*lay)(framing(middle)), middle) < 0.03 * 2 * radius);
}

TEST(LayOutlines, HoldsWhereHairHidesMostOfAShoulder) {
    HeadOutline hidden = drawn();
    hidden.shoulders[0].erase(hidden.shoulders[0].begin() + 20, hidden.shoulders[0].end());
    const auto lay = lay_outlines(drawn(), hidden);
    ASSERT_TRUE(lay);
    EXPECT_NEAR(lay->scale(), 1, 0.005);
}

TEST(LayOutlines, SaysNothingWhereTheShouldersAreOthers) {
    HeadOutline other = drawn();
    other.shoulders[0] = moved(other.shoulders[0], {0.5, -0.8, 0.2, 0.9});
    EXPECT_FALSE(lay_outlines(drawn(), other));
}

}  // namespace
}  // namespace quarterturn
