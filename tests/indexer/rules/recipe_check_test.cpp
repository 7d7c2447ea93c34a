// Every rule here is common practice.

#include "indexer/rules/recipe_check.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace quarterturn {
namespace {

Recipe whole_recipe() {
    Recipe recipe;
    recipe.hair = "washed the evening before, to the shoulder blades, fine, dense";
    recipe.cautions = "patch test on 2 May, nothing came of it";
    recipe.prep = {{"mousse", "two walnuts", "lengths"}};
    recipe.heat_protection = "spray, ten strokes";
    recipe.heat_tool = HeatTool{"curling tong", 25.0, 180};
    recipe.winding = {20, Wind::away, ""};
    recipe.sections = "crown, two sides, nape";
    recipe.parting = "left, above the arch of the brow";
    recipe.build = {{"curl away from the face", 25, {}},
                    {"twist into a low bun", 20, {{"hairpins", "bronze", 14, true}}}};
    recipe.accessory = "pearl comb above the left ear";
    recipe.finish = "light spray";
    recipe.feedback = "loves it, yes";
    recipe.feedback_details.yes_on = parse_date("2026-05-09");
    recipe.feedback_details.yes_how = "in the chair";
    recipe.feedback_details.seen_in = SeenIn::mirror_and_photos;
    recipe.hands_on_minutes = 60;
    recipe.waiting_minutes = 15;
    return recipe;
}

std::vector<std::string> said(const Recipe& recipe, Weight weight) {
    std::vector<std::string> sentences;
    for (const RecipeFinding& finding : check_recipe(recipe)) {
        if (finding.weight == weight) sentences.push_back(finding.sentence);
    }
    return sentences;
}

// One sentence of this weight that holds these words, and none of the other.
void expect_only(const Recipe& recipe, Weight weight, std::string_view words) {
    const auto findings = check_recipe(recipe);
    ASSERT_EQ(findings.size(), 1U) << words;
    EXPECT_EQ(findings[0].weight, weight);
    EXPECT_NE(findings[0].sentence.find(words), std::string::npos) << findings[0].sentence;
}

void expect_bar(const Recipe& recipe, std::string_view words) {
    expect_only(recipe, Weight::bars_sign_off, words);
}

void expect_warning(const Recipe& recipe, std::string_view words) {
    expect_only(recipe, Weight::warning, words);
}

template <class Change>
Recipe with(Change change) {
    Recipe recipe = whole_recipe();
    change(recipe);
    return recipe;
}

TEST(RecipeCheck, NothingIsSaidOfAWholeRecipe) {
    EXPECT_TRUE(check_recipe(whole_recipe()).empty());
}

TEST(RecipeCheck, WhatMakesTheLookRepeatableBarsSignOff) {
    expect_bar(with([](Recipe& r) { r.prep.clear(); }), "No prep product");
    expect_bar(with([](Recipe& r) { r.prep = {{" ", "much", "ends"}}; }), "No prep product");
    expect_bar(with([](Recipe& r) { r.parting = " \n"; }), "parting");
    expect_bar(with([](Recipe& r) { r.build.clear(); }), "No step of the build");
    expect_bar(with([](Recipe& r) { r.accessory.clear(); }), "accessory");
    expect_bar(with([](Recipe& r) {
                   r.feedback.clear();
                   r.feedback_details = {};
               }),
               "client's own words");
}

TEST(RecipeCheck, PinsNeedACount) {
    expect_bar(with([](Recipe& r) { r.build[1].pins[0].count.reset(); }),
               "Step 2 does not say how many hairpins");
    expect_bar(with([](Recipe& r) { r.build[1].pins[0].count = 0; }), "Step 2");
    expect_bar(with([](Recipe& r) {
                   r.build[0].pins = {{"", "", std::nullopt, false}};
               }),
               "Step 1 does not say how many pins");
}

TEST(RecipeCheck, NoAccessoryIsSaidWithAWord) {
    EXPECT_TRUE(check_recipe(with([](Recipe& r) { r.accessory = "none"; })).empty());
}

TEST(RecipeCheck, CurlsNeedABarrelSize) {
    expect_bar(with([](Recipe& r) { r.heat_tool->barrel_mm.reset(); }), "Curls are made");
    expect_bar(with([](Recipe& r) { r.heat_tool.reset(); }), "Curls are made");
    expect_bar(with([](Recipe& r) { r.heat_tool->barrel_mm = 0; }), "Curls are made");
}

TEST(RecipeCheck, ABarrelSizeMayStandInWords) {
    EXPECT_TRUE(check_recipe(with([](Recipe& r) {
                    r.heat_tool.reset();
                    r.build[0].words = "curl on 30 mm rollers";
                })).empty());
    EXPECT_TRUE(check_recipe(with([](Recipe& r) {
                    r.heat_tool->barrel_mm.reset();
                    r.heat_tool->kind = "25mm tong";
                })).empty());
}

TEST(RecipeCheck, HerNaturalCurlsNeedNoBarrel) {
    EXPECT_TRUE(check_recipe(with([](Recipe& r) {
                    r.heat_tool.reset();
                    r.build[0].words = "scrunch her natural curls";
                })).empty());
}

TEST(RecipeCheck, ABarrelIsMissedGentlyWhereNothingIsCurled) {
    const auto smooth = [](Recipe& r) {
        r.heat_tool->barrel_mm.reset();
        r.heat_tool->kind = "tong";
        r.build[0].words = "bend the ends";
    };
    expect_warning(with(smooth), "no barrel size");
    auto flat = with(smooth);
    flat.heat_tool->kind = "flat iron";
    EXPECT_TRUE(check_recipe(flat).empty());
}

TEST(RecipeCheck, HeatAsksForProtectionAndCare) {
    expect_warning(with([](Recipe& r) { r.heat_protection.clear(); }), "no heat protection");
    expect_warning(with([](Recipe& r) { r.heat_tool->temperature_c = 201; }),
                   "201 \u00b0C: over 200 \u00b0C can hurt hair and skin");
    EXPECT_TRUE(check_recipe(with([](Recipe& r) { r.heat_tool->temperature_c = 200; })).empty());
}

TEST(RecipeCheck, CautionsAskForAPatchTest) {
    expect_warning(with([](Recipe& r) { r.cautions = "itchy scalp from hairspray"; }),
                   "no patch test is noted");
    expect_warning(with([](Recipe& r) { r.cautions.clear(); }), "Nothing is said of allergies");
    EXPECT_TRUE(check_recipe(with([](Recipe& r) { r.cautions = "None known"; })).empty());
}

TEST(RecipeCheck, SectionsAreMissedGently) {
    expect_warning(with([](Recipe& r) { r.sections.clear(); }), "sections");
}

TEST(RecipeCheck, MinutesMayStandAtTheStepsInstead) {
    EXPECT_TRUE(check_recipe(with([](Recipe& r) { r.hands_on_minutes.reset(); })).empty());
    expect_bar(with([](Recipe& r) {
                   r.hands_on_minutes.reset();
                   r.build[0].minutes.reset();
               }),
               "hands-on minutes are missing");
    expect_bar(with([](Recipe& r) {
                   r.hands_on_minutes = 0;
                   r.build[0].minutes = 0;
               }),
               "hands-on minutes are missing");
}

TEST(RecipeCheck, StepsLongerThanTheWholeAreNoticed) {
    expect_warning(with([](Recipe& r) { r.hands_on_minutes = 44; }),
                   "The steps take 45 minutes together, but the hands-on time says 44.");
}

// Writing down more never makes a recipe less fit to be signed off.
RC_GTEST_PROP(RecipeCheck, FillingAGapNeverAddsABar, ()) {
    const Recipe whole = whole_recipe();
    Recipe lacking = whole;
    if (*rc::gen::arbitrary<bool>()) lacking.prep.clear();
    if (*rc::gen::arbitrary<bool>()) lacking.parting.clear();
    if (*rc::gen::arbitrary<bool>()) lacking.build.clear();
    if (*rc::gen::arbitrary<bool>()) lacking.hands_on_minutes.reset();
    if (*rc::gen::arbitrary<bool>()) {
        lacking.feedback.clear();
        lacking.feedback_details = {};
    }
    Recipe filled = lacking;
    switch (*rc::gen::inRange(0, 4)) {
        case 0:
            filled.prep = whole.prep;
            break;
        case 1:
            filled.parting = whole.parting;
            break;
        case 2:
            filled.hands_on_minutes = whole.hands_on_minutes;
            break;
        default:
            filled.feedback = whole.feedback;
    }
    const auto before = said(lacking, Weight::bars_sign_off);
    const auto after = said(filled, Weight::bars_sign_off);
    for (const std::string& sentence : after) {
        RC_ASSERT(std::find(before.begin(), before.end(), sentence) != before.end());
    }
}

TEST(RecipeCheck, AnEmptyRecipeIsBarredInTheOrderOfItsParts) {
    const auto bars = said({}, Weight::bars_sign_off);
    const std::vector<std::string_view> starts{"No prep",       "The parting", "No step",
                                               "The accessory", "The client",  "The hands-on"};
    ASSERT_EQ(bars.size(), starts.size());
    for (std::size_t i = 0; i < starts.size(); ++i) EXPECT_TRUE(bars[i].starts_with(starts[i]));
}

}  // namespace
}  // namespace quarterturn
