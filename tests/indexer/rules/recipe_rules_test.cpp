// The rules one by one.

#include "tests/indexer/rules/recipe_rule_cases.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace quarterturn {
namespace {

Recipe changed(const RuleCase& one) {
    Recipe recipe = evening_look_of_its_own();
    one.change(recipe);
    return recipe;
}

TEST(RecipeRules, NothingIsSaidOfAWholeRecipe) {
    EXPECT_TRUE(check_recipe(evening_look_of_its_own()).empty());
}

TEST(RecipeRules, EachTripsOnItsOwnCasesAndOnNoOther) {
    for (const RuleCase& one : rule_cases()) {
        const auto findings = check_recipe(changed(one));
        const std::string of_case =
            std::string(word(one.rule)) + ": " + std::string(one.in_trade_terms);
        EXPECT_EQ(findings.size(), one.trips ? 1U : 0U) << of_case;
        for (const RecipeFinding& finding : findings) {
            EXPECT_EQ(finding.rule, word(one.rule)) << of_case << '\n' << finding.sentence;
            EXPECT_EQ(finding.weight, usual_weight(one.rule)) << of_case;
            EXPECT_GT(finding.sentence.size(), 40U) << "no reason: " << finding.sentence;
        }
    }
}

TEST(RecipeRules, EveryRuleHasCasesOfBothKinds) {
    for (const RecipeRule rule : all_recipe_rules()) {
        for (const bool trips : {true, false}) {
            EXPECT_TRUE(std::any_of(
                rule_cases().begin(), rule_cases().end(),
                [&](const RuleCase& one) { return one.rule == rule && one.trips == trips; }))
                << word(rule) << ' ' << trips;
        }
    }
}

TEST(RecipeRules, SheMayWeighThemOtherwiseOrTurnThemOff) {
    for (const RuleCase& one : rule_cases()) {
        if (!one.trips) continue;
        RecipeRules rules;
        rules.changed[one.rule] = Weight::bars_sign_off;
        const auto barred = check_recipe(changed(one), rules);
        ASSERT_EQ(barred.size(), 1U);
        EXPECT_EQ(barred[0].weight, Weight::bars_sign_off);
        rules.changed[one.rule] = Weight::warning;
        EXPECT_EQ(check_recipe(changed(one), rules).at(0).weight, Weight::warning);
        rules.changed[one.rule] = std::nullopt;
        EXPECT_TRUE(check_recipe(changed(one), rules).empty());
    }
}

TEST(RecipeRules, ASecondLookAsksHowTheFirstOneIsMade) {
    Recipe evening = evening_look_of_its_own();
    evening.second_look->from = "Low bun";
    Recipe first = evening_look_of_its_own();
    EXPECT_TRUE(check_recipe(evening, {}, &first).empty());
    first.build[0].backcombing = Backcombing{"crown", "much"};
    first.finish_details.spray = Hold::strong;
    const auto findings = check_recipe(evening, {}, &first);
    ASSERT_EQ(findings.size(), 2U);
    EXPECT_NE(findings[0].sentence.find("backcombed"), std::string::npos);
    EXPECT_NE(findings[1].sentence.find("strong hold"), std::string::npos);
    EXPECT_TRUE(check_recipe(evening).empty());  // the first look is not known
}

TEST(RecipeRules, AreFoundByTheirNames) {
    for (const RecipeRule rule : all_recipe_rules()) {
        EXPECT_EQ(parse_recipe_rule(word(rule)), rule);
        EXPECT_FALSE(about(rule).empty());
    }
    EXPECT_EQ(parse_recipe_rule("Patch-Test"), RecipeRule::patch_test);
    EXPECT_FALSE(parse_recipe_rule("hairspray"));
}

}  // namespace
}  // namespace quarterturn
