#include "indexer/store/recipe_rules_file.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <fstream>

#include "tests/support/arbitrary_text.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

TEST(RecipeRulesFile, WeighsWhatItNames) {
    const ReadRules read = parse_recipe_rules(
        "# mine\n\npatch test = bar   # her own rule\nPARTING=off\r\n  sum_of_minutes = warning");
    EXPECT_TRUE(read.problems.empty());
    EXPECT_EQ(read.rules.weight(RecipeRule::patch_test), Weight::bars_sign_off);
    EXPECT_EQ(read.rules.weight(RecipeRule::parting), std::nullopt);
    EXPECT_EQ(read.rules.weight(RecipeRule::sum_of_minutes), Weight::warning);
    EXPECT_EQ(read.rules.weight(RecipeRule::prep), Weight::bars_sign_off);
}

TEST(RecipeRulesFile, SaysWhatItDoesNotUnderstandAndKeepsTheRest) {
    const ReadRules read =
        parse_recipe_rules("hairspray = bar\npins\nprep = maybe\ncautions = off\n");
    ASSERT_EQ(read.problems.size(), 3U);
    EXPECT_NE(read.problems[0].find("In line 1 of recipe-rules.txt, there is no rule 'hairspray'"),
              std::string::npos);
    EXPECT_NE(read.problems[1].find("In line 2"), std::string::npos);
    EXPECT_NE(read.problems[2].find("'maybe' is no weight"), std::string::npos);
    EXPECT_EQ(read.rules.weight(RecipeRule::cautions), std::nullopt);
}

RC_GTEST_PROP(RecipeRulesFile, WhatIsWrittenIsReadAgain, ()) {
    RecipeRules rules;
    for (const RecipeRule rule : all_recipe_rules()) {
        const int weight = *rc::gen::inRange(0, 3);
        rules.changed[rule] = weight == 2 ? std::nullopt : std::optional{Weight{weight}};
    }
    const ReadRules read = parse_recipe_rules(recipe_rules_text(rules));
    RC_ASSERT(read.problems.empty());
    RC_ASSERT(read.rules == rules);
}

RC_GTEST_PROP(RecipeRulesFile, SurvivesAnyText, ()) {
    const std::string text = *arbitrary_text();
    const auto lines = std::count(text.begin(), text.end(), '\n') + 1;
    RC_ASSERT(parse_recipe_rules(text).problems.size() <= static_cast<std::size_t>(lines));
}

TEST(RecipeRulesFile, LiesInTheLibrarysFolder) {
    ExampleLibrary example;
    EXPECT_EQ(read_recipe_rules(example.library).rules, RecipeRules{});
    RecipeRules rules;
    rules.changed[RecipeRule::mirror] = Weight::bars_sign_off;
    write_recipe_rules(example.library, rules);
    EXPECT_EQ(read_recipe_rules(example.library).rules.weight(RecipeRule::mirror),
              Weight::bars_sign_off);
    std::ofstream(example.library.folder() / "recipe-rules.txt", std::ios::app) << "nonsense = bar";
    EXPECT_EQ(read_recipe_rules(example.library).problems.size(), 1U);
}

}  // namespace
}  // namespace quarterturn
