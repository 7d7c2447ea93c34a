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
    recipe.hands_on_minutes = 65;
    recipe.waiting_minutes = 15;
    Lines headings;
    for (const RecipePart& part : recipe_parts(recipe)) headings.push_back(part.heading);
    EXPECT_EQ(headings,
              (Lines{"Cautions", "Hair on the day", "Prep", "Heat protection", "Heat tool",
                     "Sections", "Parting", "Build", "Accessory", "Finish", "Feedback", "Time"}));
    EXPECT_EQ(recipe_parts(recipe)[7].lines, (Lines{"1. Twist", "2. Pin"}));
    EXPECT_EQ(recipe_parts(recipe)[11].lines, (Lines{"65 min hands-on, 15 min waiting"}));
}

}  // namespace
}  // namespace quarterturn
