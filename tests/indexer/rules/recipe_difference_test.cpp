#include "indexer/rules/recipe_difference.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/support/arbitrary_recipe.h"

namespace quarterturn {
namespace {

using Lines = std::vector<std::string>;

Recipe trial_one() {
    Recipe recipe;
    recipe.parting = "side, on her left";
    recipe.heat_tool = HeatTool{"tongs", 25, 170};
    recipe.build = {{"Curl crown and back away from the face", 20, {}},
                    {"Brush through with a soft brush", 5, {}},
                    {"Twist the tail into a low bun", 12, {{"hair pin", "brown", 8, true}}}};
    return recipe;
}

TEST(RecipeDifference, EqualRecipesHaveNone) {
    EXPECT_TRUE(recipe_difference(trial_one(), trial_one()).empty());
    EXPECT_TRUE(told_changes(trial_one(), recipe_difference(trial_one(), trial_one())).empty());
}

TEST(RecipeDifference, IsToldByFieldAndStep) {
    Recipe second = trial_one();
    second.parting = "in the middle";
    second.heat_tool->barrel_mm = 32;
    second.finish = "light spray";
    second.build[2].pins[0].count = 11;
    second.build.insert(second.build.begin() + 1, Step{"Set the padding at the crown", 4, {}});
    const std::vector<ToldChange> expected{
        {"Heat tool", {"tongs, 25 mm, 170 °C"}, {"tongs, 32 mm, 170 °C"}},
        {"Parting", {"side, on her left"}, {"in the middle"}},
        {"Finish", {}, {"light spray"}},
        {"Step 2, new", {}, {"Set the padding at the crown (4 min)"}},
        {"Step 4, before step 3",
         {"Twist the tail into a low bun (8 × hair pin, brown, crossed; 12 min)"},
         {"Twist the tail into a low bun (11 × hair pin, brown, crossed; 12 min)"}}};
    EXPECT_EQ(told_changes(trial_one(), recipe_difference(trial_one(), second)), expected);
}

TEST(RecipeDifference, AStepThatWasLeftOutIsNotTakenForAnother) {
    Recipe second = trial_one();
    second.build.erase(second.build.begin() + 1);
    const auto told = told_changes(trial_one(), recipe_difference(trial_one(), second));
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told[0].what, "Step 2, left out");
    EXPECT_EQ(told[0].was, (Lines{"Brush through with a soft brush (5 min)"}));
    EXPECT_TRUE(told[0].is.empty());
}

TEST(RecipeDifference, AStepWrittenAnewIsChangedNotReplaced) {
    Recipe second = trial_one();
    second.build[1].words = "Brush through once with a soft wide brush";
    const auto difference = recipe_difference(trial_one(), second);
    ASSERT_EQ(difference.steps.size(), 3U);
    EXPECT_EQ(difference.steps[1].edit, StepEdit::changed);
}

// Another revision of a recipe: some fields from elsewhere, steps left out, changed, moved, added.
Recipe another_revision(const Recipe& first) {
    Recipe second = arbitrary_recipe();
    if (*rc::gen::arbitrary<bool>()) second.parting = first.parting;
    if (*rc::gen::arbitrary<bool>()) second.heat_tool = first.heat_tool;
    if (*rc::gen::arbitrary<bool>()) second.pieces = first.pieces;
    std::vector<Step> steps;
    for (const Step& step : first.build) {
        const int fate = *rc::gen::inRange(0, 5);
        if (fate == 0) continue;
        steps.push_back(step);
        if (fate == 1) steps.back().minutes = *rc::gen::inRange(0, 60);
        if (fate == 2 && !second.build.empty()) steps.push_back(second.build.front());
    }
    if (*rc::gen::inRange(0, 4) == 0 && steps.size() > 1) std::swap(steps.front(), steps.back());
    second.build = steps;
    return second;
}

RC_GTEST_PROP(RecipeDifference, AppliedToTheFirstGivesTheSecond, ()) {
    const Recipe first = arbitrary_recipe();
    const Recipe second =
        *rc::gen::arbitrary<bool>() ? another_revision(first) : arbitrary_recipe();
    const RecipeDifference difference = recipe_difference(first, second);
    RC_ASSERT(with_difference(first, difference) == second);
    RC_ASSERT(difference.empty() == (first == second));
    const auto back = recipe_difference(second, first);
    RC_ASSERT(with_difference(second, back) == first);
    RC_ASSERT(back.fields == difference.fields);
}

// It says no more than what changed: the new values of other fields are not in it.
RC_GTEST_PROP(RecipeDifference, HoldsNothingElse, ()) {
    const Recipe first = arbitrary_recipe();
    Recipe second = first;
    second.parting += "x";
    const RecipeDifference difference = recipe_difference(first, second);
    Recipe only;
    only.parting = second.parting;
    RC_ASSERT(difference.fields == std::vector<std::string>{"parting"});
    RC_ASSERT(difference.now == only);
    RC_ASSERT(difference.steps.empty());
}

// The other way to count: the longest common run of steps is never torn.
RC_GTEST_PROP(RecipeDifference, KeepsAsManyStepsAsCanBe, ()) {
    const auto steps = [] {
        std::vector<Step> result;
        for (int left = *rc::gen::inRange(0, 7); left > 0; --left) {
            result.push_back({std::to_string(*rc::gen::inRange(0, 4)), std::nullopt, {}});
        }
        return result;
    };
    Recipe first;
    first.build = steps();
    Recipe second;
    second.build = steps();
    const std::size_t n = first.build.size();
    std::size_t best = 0;
    for (unsigned chosen = 0; chosen < (1U << n); ++chosen) {
        std::size_t length = 0;
        std::size_t at = 0;
        bool found = true;
        for (std::size_t i = 0; i < n && found; ++i) {
            if ((chosen >> i & 1U) == 0) continue;
            while (at < second.build.size() && second.build[at] != first.build[i]) ++at;
            found = at++ < second.build.size();
            ++length;
        }
        if (found) best = std::max(best, length);
    }
    const auto difference = recipe_difference(first, second);
    const auto kept = static_cast<std::size_t>(
        std::count_if(difference.steps.begin(), difference.steps.end(),
                      [](const StepChange& change) { return change.edit == StepEdit::kept; }));
    RC_ASSERT((first == second ? n : kept) == best);
}

}  // namespace
}  // namespace quarterturn
