#include "indexer/looks/look_state.h"

#include <gtest/gtest.h>

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
