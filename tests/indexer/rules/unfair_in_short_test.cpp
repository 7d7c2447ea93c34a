#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "indexer/rules/fair_pair.h"

namespace quarterturn {
namespace {

TEST(UnfairInShort, NamesWhatDiffersTooMuchWithItsFigure) {
    PairFigures figures;
    EXPECT_EQ(unfair_in_short(figures), "");
    figures.light = {-1.24, 5.31, false};
    figures.size = 1.6;
    figures.turn_degrees = -7.2;
    EXPECT_EQ(unfair_in_short(figures),
              "1.2 EV darker, other light, 1.6 times as large, tilted by 7°");
    figures = {};
    figures.size = 0.5;
    EXPECT_EQ(unfair_in_short(figures), "2.0 times as large");
}

RC_GTEST_PROP(UnfairInShortProperty, SaysSomethingWhereverTheJudgementDoes, ()) {
    const auto number = [](int most) { return *rc::gen::inRange(-most, most) / 100.0; };
    PairFigures figures;
    if (*rc::gen::arbitrary<bool>()) {
        figures.light = {number(200), std::abs(number(800)), *rc::gen::arbitrary<bool>()};
    }
    if (*rc::gen::arbitrary<bool>()) figures.size = 0.2 + std::abs(number(300));
    if (*rc::gen::arbitrary<bool>()) figures.turn_degrees = number(2000);
    RC_ASSERT(unfair_in_short(figures).empty() == judge_fairness(figures).unfair.empty());
}

}  // namespace
}  // namespace quarterturn
