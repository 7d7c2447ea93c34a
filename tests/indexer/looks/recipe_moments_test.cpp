#include "indexer/looks/recipe_moments.h"

#include "indexer/looks/write_recipe.h"
#include "tests/indexer/looks/whole_look.h"

namespace quarterturn {
namespace {

// The whole look with a trial on 7 November, and a wedding day on the 21st.
class RecipeMomentsTest : public testing::Test {
  protected:
    RecipeMomentsTest() {
        Sitting sitting;
        sitting.client = whole.mira;
        sitting.wedding = whole.wedding;
        sitting.kind = SittingKind::wedding_day;
        sitting.starts = at("2026-11-21T08:00");
        sitting.ends = at("2026-11-21T11:00");
        day = whole.library.sittings().add(sitting);
        Look look = bun();
        look.sittings.push_back(day);
        whole.library.looks().change(look);
    }

    Look bun() { return *whole.library.looks().find(whole.look); }

    PhotoId photo_on_the_day(Angle angle) {
        const PhotoId photo = whole.add_photo("DAY_" + std::to_string(whole.photos.size()) + ".JPG",
                                              {Stage::after, angle});
        whole.tag(photo, [&](Tags& tags) { tags.sitting = day; });
        return photo;
    }

    void trial_photos() {
        for (const PhotoId photo : std::vector(whole.photos)) {
            whole.tag(photo, [&](Tags& tags) { tags.sitting = whole.trial; });
        }
    }

    void save(const char* parting, const char* time) {
        Recipe recipe = whole_recipe();
        recipe.parting = parting;
        save_recipe(whole.library, bun(), recipe, at(time));
    }

    std::vector<RecipeMoment> moments() { return recipe_moments(whole.library, whole.mira); }

    WholeLook whole;
    SittingId day;
};

TEST_F(RecipeMomentsTest, EachRevisionStandsWithItsSitting) {
    save("middle", "2026-11-07T12:30");
    save("right", "2026-11-21T09:00");
    const auto found = moments();
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[1].sitting->id, whole.trial);
    EXPECT_EQ(found[2].sitting->id, day);
    EXPECT_EQ(found[2].revision.recipe.parting, "right");
}

TEST_F(RecipeMomentsTest, ADayDoneFromTheTrialsRecipeStandsAfterIt) {
    save("middle", "2026-11-07T12:30");
    EXPECT_EQ(moments().size(), 2U);  // no photo says that anything was done
    photo_on_the_day(Angle::left);
    const auto found = moments();
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[2].sitting->id, day);
    EXPECT_EQ(found[2].revision.recipe.parting, "middle");
}

TEST_F(RecipeMomentsTest, ARecipeWrittenAtHomeStandsWithTheSittingsDoneFromIt) {
    EXPECT_FALSE(moments().at(0).sitting);
    trial_photos();
    photo_on_the_day(Angle::left);
    const auto found = moments();
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].sitting->id, whole.trial);
    EXPECT_EQ(found[1].sitting->id, day);
}

TEST_F(RecipeMomentsTest, TrialAgainstWeddingDayIsWhatSheMostLikelyWantsToSee) {
    save("middle", "2026-11-07T12:30");
    save("right", "2026-11-21T09:00");
    save("none", "2026-11-21T10:00");
    const auto found = moments();
    const auto pair = likely_pair(found, whole.look);
    ASSERT_TRUE(pair);
    EXPECT_EQ(found[pair->was].revision.recipe.parting, "middle");
    EXPECT_EQ(found[pair->is].revision.recipe.parting, "none");
}

TEST_F(RecipeMomentsTest, ALookThatWasSavedOnceIsComparedWithAnotherOfHers) {
    EXPECT_FALSE(likely_pair(moments(), whole.look));
    Look waves = bun();
    waves.name = "let down in waves";
    waves.id = whole.library.looks().add(waves);
    EXPECT_FALSE(likely_pair(moments(), waves.id));
    save_recipe(whole.library, waves, whole_recipe(), at("2026-11-07T13:00"));
    const auto found = moments();
    const auto pair = likely_pair(found, waves.id);
    ASSERT_TRUE(pair);
    EXPECT_EQ(found[pair->was].look.id, whole.look);
    EXPECT_EQ(found[pair->is].look.id, waves.id);
}

TEST_F(RecipeMomentsTest, PhotosOfTheSameAngleArePairedTheBestOfEachSide) {
    trial_photos();
    save("middle", "2026-11-07T12:30");
    const PhotoId left = photo_on_the_day(Angle::left);
    const PhotoId crown = photo_on_the_day(Angle::crown);
    const auto found = moments();
    const auto pairs = angle_pairs(whole.library, found[1], found[2]);
    ASSERT_EQ(pairs.size(), 5U);  // left, front, right, back and the crown
    EXPECT_EQ(pairs[0].angle, Angle::left);
    ASSERT_TRUE(pairs[0].was && pairs[0].is);
    EXPECT_EQ(pairs[0].is->id, left);
    EXPECT_EQ(pairs[0].was->tags.sitting, whole.trial);
    EXPECT_EQ(pairs[1].angle, Angle::front);
    EXPECT_FALSE(pairs[1].is);
    EXPECT_FALSE(pairs[4].was);
    EXPECT_EQ(pairs[4].is->id, crown);
}

TEST_F(RecipeMomentsTest, TwoRevisionsOfOneSittingHaveNoPairs) {
    trial_photos();
    save("middle", "2026-11-07T12:30");
    save("right", "2026-11-07T12:40");
    const auto found = moments();
    EXPECT_TRUE(angle_pairs(whole.library, found[1], found[2]).empty());
    EXPECT_TRUE(angle_pairs(whole.library, found[0], found[2]).empty());  // the same photos
}

}  // namespace
}  // namespace quarterturn
