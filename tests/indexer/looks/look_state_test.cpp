#include "indexer/looks/look_state.h"

#include <gtest/gtest.h>

#include "indexer/store/recipe_rules_file.h"
#include "tests/indexer/looks/whole_look.h"

namespace quarterturn {
namespace {

TEST(LookState, GathersWhatIsKnownOfALook) {
    WholeLook whole;
    const LookState state = whole.state();
    EXPECT_EQ(state.client.id, whole.mira);
    EXPECT_EQ(state.wedding->id, whole.wedding);
    EXPECT_EQ(state.photos.size(), 8U);
    EXPECT_TRUE(state.coverage.complete);
    EXPECT_TRUE(state.recipe_findings.empty());
    EXPECT_FALSE(state.sign_off);
}

TEST(LookState, PhotosOfTheSittingThatDoNotCountStayOut) {
    WholeLook whole;
    const PhotoId other = whole.add_photo("IMG_0500.JPG", {Stage::during, Angle::back});
    whole.tag(other, [&](Tags& tags) {
        tags.look.reset();
        tags.sitting = whole.trial;
    });
    EXPECT_EQ(whole.state().photos.size(), 8U);
    whole.tag(other, [](Tags& tags) { tags.stage = Stage::before; });
    EXPECT_EQ(whole.state().photos.size(), 9U);
}

TEST(LookState, HerOwnRulesWeighTheRecipe) {
    WholeLook whole;
    const auto rules = [&](const char* text) {
        std::ofstream(whole.library.folder() / recipe_rules_name) << text;
    };
    Recipe recipe = whole_recipe();
    recipe.feedback_details = {};
    recipe.parting.clear();
    whole.library.recipes().save(whole.look, recipe, whole.noon);
    rules("client's yes = bar\nparting = off\n");
    EXPECT_EQ(whole.sign().size(), 1U);
    rules("client's yes = off\nparting = off\nno such rule = bar\n");
    ASSERT_EQ(whole.state().recipe_findings.size(), 1U);
    EXPECT_NE(whole.state().recipe_findings[0].sentence.find("no rule 'no such rule'"),
              std::string::npos);
    EXPECT_TRUE(whole.sign().empty());
}

TEST(LookState, ASecondLookIsJudgedByTheRecipeOfTheFirst) {
    WholeLook whole;
    Recipe first = whole_recipe();
    first.finish_details.spray = Hold::strong;
    whole.library.recipes().save(whole.look, first, whole.noon);
    Look evening;
    evening.client = whole.mira;
    evening.name = "Let down";
    const LookId id = whole.library.looks().add(evening);
    Recipe recipe = whole_recipe();
    recipe.second_look = SecondLook{"LOW TWISTED BUN", "the pins", "", "", "", {}};
    whole.library.recipes().save(id, recipe, whole.noon);
    const auto findings = look_state(whole.library, id).recipe_findings;
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].rule, "comes down again");
}

TEST(LookState, WithoutARecipeOneSentenceSaysSo) {
    ExampleLibrary example;
    const LookState state = look_state(example.library, example.look);
    ASSERT_EQ(state.recipe_findings.size(), 1U);
    EXPECT_EQ(state.recipe_findings[0].weight, Weight::bars_sign_off);
    EXPECT_FALSE(state.recipe);
    EXPECT_FALSE(state.coverage.complete);
}

TEST(LookState, ALookThatIsNotThereIsNamed) {
    ExampleLibrary example;
    try {
        look_state(example.library, LookId{404});
        FAIL() << "found a look that is not there";
    } catch (const StoreError& error) {
        EXPECT_NE(std::string(error.what()).find("404"), std::string::npos);
    }
}

}  // namespace
}  // namespace quarterturn
