#include "indexer/record/recipe_text.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

using Lines = std::vector<std::string>;

TEST(RecipeText, ProductSaysNameAmountAndPlace) {
    EXPECT_EQ(product_text({"setting lotion", "two walnuts", "damp lengths"}),
              "setting lotion, two walnuts, damp lengths");
    EXPECT_EQ(product_text({"setting lotion", "", "roots"}), "setting lotion, roots");
}

TEST(RecipeText, HeatToolSaysWhatIsKnown) {
    EXPECT_EQ(heat_tool_text({"tongs", 25.0, 170}), "tongs, 25 mm, 170 °C");
    EXPECT_EQ(heat_tool_text({"tongs", 12.5, std::nullopt}), "tongs, 12.5 mm");
    EXPECT_EQ(heat_tool_text({"diffuser", std::nullopt, std::nullopt}), "diffuser");
}

TEST(RecipeText, PinsSayHowManyWhichAndWhetherCrossed) {
    EXPECT_EQ(pins_text({"grip", "brown", 6, true}), "6 × grip, brown, crossed");
    EXPECT_EQ(pins_text({"grips", "", std::nullopt, false}), "grips");
}

TEST(RecipeText, StepNamesItsPinsAndMinutes) {
    const Step step{
        "Pin the twist.", 10, {{"grip", "brown", 6, false}, {"pearl pin", "", 3, false}}};
    EXPECT_EQ(step_text(step), "Pin the twist. (6 × grip, brown; 3 × pearl pin; 10 min)");
    EXPECT_EQ(step_text({"Brush out", std::nullopt, {}}), "Brush out");
}

TEST(RecipeText, EmptyRecipeHasNoParts) {
    EXPECT_TRUE(recipe_parts({}).empty());
}

// Cautions come first: they are read before anything is put on the hair (common practice).
TEST(RecipeText, PartsStandInWorkingOrderAndCautionsFirst) {
    Recipe recipe;
    recipe.hair = "fine";
    recipe.cautions = "tender spot behind the left ear";
    recipe.prep = {{"lotion", "", ""}};
    recipe.heat_protection = "spray";
    recipe.heat_tool = HeatTool{"tongs", std::nullopt, std::nullopt};
    recipe.sections = "three";
    recipe.parting = "side, on her left";
    recipe.build = {{"Twist", std::nullopt, {}}, {"Pin", std::nullopt, {}}};
    recipe.accessory = "comb";
    recipe.finish = "hold spray";
    recipe.feedback = "loves it";
    recipe.drying = "rough-dried";
    recipe.winding = {20, Wind::away, ""};
    recipe.setting = {"pinned", 15, 60};
    recipe.head_plan.marks = {{1, {0, 0}, "comb"}};
    recipe.pieces = {{.kind = PieceKind::padding,
                      .what = "crescent",
                      .colour = "light",
                      .count = {},
                      .brought_by = "the stylist",
                      .where = {},
                      .at = PlanPoint{0, 0.5},
                      .photo = {}}};
    recipe.second_look =
        SecondLook{"Low bun", "the comb", "the grips", "Ysolde", "18:30", {"Open"}};
    recipe.hands_on_minutes = 65;
    recipe.waiting_minutes = 15;
    Lines headings;
    for (const RecipePart& part : recipe_parts(recipe)) headings.push_back(part.heading);
    EXPECT_EQ(headings, (Lines{"Cautions", "Hair on the day", "Prep", "Heat protection", "Drying",
                               "Heat tool", "Winding", "Setting", "Sections", "Parting",
                               "Head plan", "Build", "Padding and pieces", "Accessory", "Finish",
                               "Second look", "Feedback", "Time"}));
    const auto lines = [&](const char* heading) {
        const auto parts = recipe_parts(recipe);
        return std::find_if(parts.begin(), parts.end(),
                            [&](const RecipePart& part) { return part.heading == heading; })
            ->lines;
    };
    EXPECT_EQ(lines("Build"), (Lines{"1. Twist", "2. Pin"}));
    EXPECT_EQ(lines("Winding"), (Lines{"sections of 20 mm, away from the face"}));
    EXPECT_EQ(lines("Setting"), (Lines{"pinned, 15 min to cool, may be left 60 min"}));
    EXPECT_EQ(lines("Head plan"), (Lines{"Mark 1: comb"}));
    EXPECT_EQ(lines("Padding and pieces"),
              (Lines{"Padding: crescent, light, brought by the stylist, marked on the head plan"}));
    EXPECT_EQ(lines("Second look"),
              (Lines{"From: Low bun", "Taken out: the comb", "Stays: the grips", "Done by: Ysolde",
                     "At: 18:30", "1. Open"}));
    EXPECT_EQ(lines("Time"), (Lines{"65 min hands-on, 15 min waiting"}));
}

TEST(RecipeText, DetailsFollowTheWordsOfTheirPart) {
    Recipe recipe;
    recipe.hair = "fine";
    recipe.hair_on_the_day.damp = "dry";
    recipe.hair_on_the_day.length = "to the waist";
    recipe.caution_details.sensitivities = {{"latex", parse_date("2026-05-02"), "no reaction"}};
    recipe.parting = "above the brow";
    recipe.parting_line = {PartingSide::left, 4.5};
    recipe.finish_details.spray = Hold::regular;
    recipe.feedback_details.yes_on = parse_date("2026-11-07");
    recipe.feedback_details.yes_how = "in the chair";
    recipe.feedback_details.seen_in = SeenIn::mirror;
    const std::vector<RecipePart> expected{
        {"Cautions", {"sensitive to latex, patch test on 2026-05-02, no reaction"}},
        {"Hair on the day", {"fine", "Dry or damp: dry", "Length: to the waist"}},
        {"Parting", {"above the brow", "4.5 cm left of the centre"}},
        {"Finish", {"Spray: regular hold"}},
        {"Feedback", {"Her yes: 2026-11-07, in the chair", "Judged in: mirror"}}};
    EXPECT_EQ(recipe_parts(recipe), expected);
}

TEST(RecipeText, AStepTellsItsToolWindBackcombingAndPhotos) {
    Step step{"Curl the crown", 10, {}};
    step.heat_tool = HeatTool{"tongs", 25, std::nullopt, 340};
    step.winding.direction = Wind::away;
    step.setting.how = "clipped";
    step.waiting_minutes = 15;
    step.backcombing = Backcombing{"crown", "light"};
    step.photos = {std::string(64, 'a')};
    EXPECT_EQ(step_text(step),
              "Curl the crown (tongs, 25 mm, 340 °F; away from the face; clipped; "
              "backcombed, crown, light; 10 min; 15 min waiting; 1 photo)");
}

}  // namespace
}  // namespace quarterturn
