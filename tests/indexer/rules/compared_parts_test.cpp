#include "indexer/rules/compared_parts.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "indexer/record/recipe_text.h"
#include "tests/support/arbitrary_recipe.h"

namespace quarterturn {
namespace {

using Lines = std::vector<std::string>;

Recipe trial_of_recipe() {
    Recipe recipe;
    recipe.hair = "washed the evening before";
    recipe.parting = "side, on her left";
    recipe.accessory = "leaf comb";
    recipe.build = {{"Curl crown and back away from the face", 20, {}},
                    {"Brush through with a soft brush", 5, {}}};
    return recipe;
}

TEST(ComparedParts, StandInWorkingOrderWithWhatStayed) {
    Recipe second = trial_of_recipe();
    second.parting = "in the middle";
    second.accessory.clear();
    second.finish = "light spray";
    second.build.push_back({"Pin the twist", 8, {}});
    const std::vector<ComparedPart> expected{
        {PartEdit::same, "Hair on the day", {trial_of_recipe().hair}, {trial_of_recipe().hair}},
        {PartEdit::changed, "Parting", {"side, on her left"}, {"in the middle"}},
        {PartEdit::same,
         "Step 1",
         {"Curl crown and back away from the face (20 min)"},
         {"Curl crown and back away from the face (20 min)"}},
        {PartEdit::same,
         "Step 2",
         {"Brush through with a soft brush (5 min)"},
         {"Brush through with a soft brush (5 min)"}},
        {PartEdit::added, "Step 3, new", {}, {"Pin the twist (8 min)"}},
        {PartEdit::removed, "Accessory", {"leaf comb"}, {}},
        {PartEdit::added, "Finish", {}, {"light spray"}}};
    EXPECT_EQ(compared_parts(trial_of_recipe(), second), expected);
}

TEST(ComparedParts, ALineDrawnElsewhereIsAChangeThoughTheWordsAreTheSame) {
    Recipe was;
    was.head_plan.strokes = {{StrokeKind::parting, {{0, -1}, {0, 0}}}};
    Recipe is = was;
    is.head_plan.strokes[0].points[0].x = 0.3;
    const auto parts = compared_parts(was, is);
    ASSERT_EQ(parts.size(), 1U);
    EXPECT_EQ(parts[0].edit, PartEdit::changed);
    EXPECT_TRUE(parts[0].drawing);
}

TEST(ComparedParts, AnotherPhotoOfAStepIsSaid) {
    Recipe is = trial_of_recipe();
    is.build[1].photos = {std::string(64, 'a')};
    for (const ComparedPart& part : compared_parts(trial_of_recipe(), is)) {
        if (part.edit == PartEdit::same) continue;
        EXPECT_EQ(part.what, "Step 2");
        EXPECT_NE(part.was, part.is);
    }
}

RC_GTEST_PROP(ComparedParts, OfOneRecipeAreAllTheSame, ()) {
    const Recipe recipe = arbitrary_recipe();
    for (const ComparedPart& part : compared_parts(recipe, recipe)) {
        RC_ASSERT(part.edit == PartEdit::same);
        RC_ASSERT(part.was == part.is);
    }
}

// Without steps, whose lines lose their numbers.
Lines lines_of(const Recipe& recipe) {
    Lines lines;
    for (const RecipePart& part : recipe_parts(recipe)) {
        if (part.heading != "Build") {
            lines.insert(lines.end(), part.lines.begin(), part.lines.end());
        }
    }
    return lines;
}

RC_GTEST_PROP(ComparedParts, LoseNoLineOfEitherRecipe, ()) {
    Recipe was = arbitrary_recipe();
    Recipe is = arbitrary_recipe();
    was.build.clear();
    is.build.clear();
    Lines before;
    Lines after;
    for (const ComparedPart& part : compared_parts(was, is)) {
        before.insert(before.end(), part.was.begin(), part.was.end());
        after.insert(after.end(), part.is.begin(), part.is.end());
    }
    for (const std::string& line : lines_of(was)) {
        RC_ASSERT(std::find(before.begin(), before.end(), line) != before.end());
    }
    for (const std::string& line : lines_of(is)) {
        RC_ASSERT(std::find(after.begin(), after.end(), line) != after.end());
    }
}

}  // namespace
}  // namespace quarterturn
