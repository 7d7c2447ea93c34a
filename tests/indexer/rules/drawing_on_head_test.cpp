#include "indexer/rules/drawing_on_head.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

namespace quarterturn {
namespace {

using Points = std::vector<PlanPoint>;

// The nearest of many points along the line, so that no formula is shared with what is tested.
double away_from_line(PlanPoint point, const Points& line) {
    double nearest = std::hypot(point.x - line.front().x, point.y - line.front().y);
    for (std::size_t i = 1; i < line.size(); ++i) {
        for (int step = 0; step <= 500; ++step) {
            const double share = step / 500.0;
            const double x = line[i - 1].x + share * (line[i].x - line[i - 1].x);
            const double y = line[i - 1].y + share * (line[i].y - line[i - 1].y);
            nearest = std::min(nearest, std::hypot(point.x - x, point.y - y));
        }
    }
    return nearest;
}

// A hand that goes on in about the direction it has.
Points hand_trail() {
    Points trail{{*rc::gen::inRange(-60, 60) / 100.0, *rc::gen::inRange(-60, 60) / 100.0}};
    double direction = *rc::gen::inRange(0, 628) / 100.0;
    const auto turns = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-60, 61));
    for (const int turn : turns) {
        direction += turn / 100.0;
        trail.push_back({trail.back().x + 0.03 * std::cos(direction),
                         trail.back().y + 0.03 * std::sin(direction)});
    }
    return trail;
}

RC_GTEST_PROP(DrawnLine, StaysByTheHandOnTheHeadAndTakesNoMorePoints, ()) {
    const Points trail = hand_trail();
    const Points line = drawn_line(trail);
    RC_ASSERT(!line.empty());
    RC_ASSERT(line.size() <= trail.size());
    RC_ASSERT(line.front() == on_head(trail.front()));
    for (const PlanPoint& point : line) {
        RC_ASSERT(std::hypot(point.x, point.y) <= 1.01);
        RC_ASSERT(std::abs(point.x * 100 - std::round(point.x * 100)) < 1e-9);
    }
    for (const PlanPoint& point : trail) {
        RC_ASSERT(away_from_line(on_head(point), line) <= hand_tolerance);
    }
}

TEST(DrawnLine, AStraightLineDrawnWithAShakyHandTakesTwoPoints) {
    Points trail;
    for (int i = 0; i <= 100; ++i) trail.push_back({0.01 * (i % 2), -0.9 + 0.009 * i});
    EXPECT_EQ(drawn_line(trail), (Points{{0, -0.9}, {0, 0}}));
}

TEST(DrawnLine, AnArcFromEarToEarTakesAHandful) {
    Points trail;
    for (int i = 0; i <= 200; ++i) {
        const double angle = std::numbers::pi * i / 200;
        trail.push_back({-0.8 * std::cos(angle), 0.8 * std::sin(angle)});
    }
    const Points line = drawn_line(trail);
    EXPECT_GE(line.size(), 5U);
    EXPECT_LE(line.size(), 12U);
    EXPECT_EQ(line.front(), (PlanPoint{-0.8, 0}));
    EXPECT_EQ(line.back(), (PlanPoint{0.8, 0}));
}

TEST(DrawnLine, WhatIsDrawnBesideTheHeadLiesOnItsEdge) {
    EXPECT_EQ(on_head({3, 0}), (PlanPoint{1, 0}));
    EXPECT_EQ(on_head({-0.4, 0.204}), (PlanPoint{-0.4, 0.2}));
    EXPECT_EQ(drawn_line({}), Points{});
}

TEST(DrawnStroke, ASectionWhoseEndsNearlyMeetGoesRound) {
    const Points nearly{{-0.5, 0.2}, {0.5, 0.2}, {0, 0.8}, {-0.45, 0.25}};
    EXPECT_TRUE(goes_round(stroke_of(StrokeKind::section, nearly)));
    EXPECT_FALSE(goes_round(stroke_of(StrokeKind::parting, nearly)));
    Points open = nearly;
    open.back() = {-0.3, 0.5};
    EXPECT_FALSE(goes_round(stroke_of(StrokeKind::section, open)));
}

class ThingsDrawn : public testing::Test {
  protected:
    HeadDrawing drawing{
        {{StrokeKind::parting, {{0, -1}, {0, 0}}}, {StrokeKind::section, {{-1, 0}, {1, 0}}}},
        {{1, {0.5, 0.5}, "comb"}, {3, {-0.5, 0.5}, "padding"}}};
};

TEST_F(ThingsDrawn, AreFoundByWhereTheyLie) {
    EXPECT_EQ(thing_at(drawing, {0.05, -0.5}, 0.1), 0U);
    EXPECT_EQ(thing_at(drawing, {0.7, 0.06}, 0.1), 1U);
    EXPECT_EQ(thing_at(drawing, {-0.5, 0.45}, 0.1), 3U);
    EXPECT_EQ(thing_at(drawing, {0.3, -0.5}, 0.1), std::nullopt);
}

TEST_F(ThingsDrawn, WhereTwoLieTheOneDrawnLastIsFound) {
    EXPECT_EQ(thing_at(drawing, {0, 0}, 0.1), 1U);
}

TEST_F(ThingsDrawn, AreTakenOutOneByOneAndTheOthersStay) {
    const HeadDrawing less = without_thing(without_thing(drawing, 2), 0);
    ASSERT_EQ(less.strokes.size(), 1U);
    EXPECT_EQ(less.strokes[0], drawing.strokes[1]);
    ASSERT_EQ(less.marks.size(), 1U);
    EXPECT_EQ(less.marks[0].number, 3);
    EXPECT_THROW(without_thing(less, 2), std::out_of_range);
}

TEST_F(ThingsDrawn, AMarkGetsTheLowestNumberThatIsFree) {
    EXPECT_EQ(free_number(drawing), 2);
    EXPECT_EQ(free_number({}), 1);
}

}  // namespace
}  // namespace quarterturn
