#include "indexer/looks/take_down.h"

#include "tests/indexer/looks/whole_look.h"

namespace quarterturn {
namespace {

class TakeDownOfALook : public testing::Test, public WholeLook {
  protected:
    TakeDownOfALook() {
        Look waves;
        waves.client = mira;
        waves.wedding = wedding;
        waves.name = "let down in waves";
        waves.worn = Worn::evening;
        waves.sittings = {trial};
        evening = library.looks().add(waves);
        second.from = "low twisted bun";
        second.taken_out = "the comb, 14 pins";
        second.stays = "the two grips above the left ear";
        second.done_by = "Aud";
        second.at = "18:30";
        second.steps = {"Take out the comb.", "Take out 14 pins."};
    }

    void save(LookId of) {
        Recipe recipe = whole_recipe();
        recipe.cautions = "left ear is tender";
        recipe.second_look = second;
        library.recipes().save(of, recipe, at("2026-11-07T12:05"));
    }

    bool lacks(const TakeDown& card, const std::string& words) {
        return std::ranges::any_of(card.lacks,
                                   [&](const std::string& lack) { return holds(lack, words); });
    }

    LookId evening;
    SecondLook second;
};

TEST_F(TakeDownOfALook, GathersBothLooksWhicheverIsNamed) {
    save(evening);
    const PhotoId after = add_photo("WAVES.JPG", {Stage::after, Angle::back});
    tag(after, [&](Tags& tags) { tags.look = evening; });
    for (const LookId named : {evening, look}) {
        const TakeDown card = take_down(library, named);
        EXPECT_EQ(card.from, "low twisted bun");
        EXPECT_EQ(card.to, "let down in waves");
        EXPECT_EQ(card.at, "18:30");
        EXPECT_EQ(card.done_by, "Aud");
        EXPECT_EQ(card.steps, second.steps);
        EXPECT_EQ(card.before.size(), 4U);
        ASSERT_EQ(card.after.size(), 1U);
        EXPECT_EQ(card.after[0].photo->id, after);
        EXPECT_TRUE(card.lacks.empty());
        EXPECT_EQ(card.cautions.front(), "none known");  // of the look it comes from
        EXPECT_EQ(std::ranges::count(card.cautions, "left ear is tender"), 1);
        EXPECT_TRUE(holds(card.cautions.back(), "Hot tools and spray only"));
    }
}

TEST_F(TakeDownOfALook, MayBeToldInTheFirstLooksOwnRecipe) {
    second.from = "";
    save(look);
    const TakeDown card = take_down(library, look);
    EXPECT_EQ(card.from, "low twisted bun");
    EXPECT_EQ(card.to, "let down in waves");
    EXPECT_EQ(card.before.size(), 4U);
    EXPECT_TRUE(lacks(card, "no photo of what it should look like after"));
}

TEST_F(TakeDownOfALook, SaysWhatToWriteAndWhere) {
    const TakeDown nothing = take_down(library, evening);
    EXPECT_TRUE(lacks(nothing,
                      "The recipe of let down in waves does not say how the hair is let "
                      "down: write it under \"Second look\"."));
    second = {};
    second.from = "low twisted bun";
    save(evening);
    const TakeDown bare = take_down(library, evening);
    for (const char* words : {"the steps", "which pins are taken out", "what stays in", "when"}) {
        EXPECT_TRUE(lacks(bare, words)) << words;
    }
    EXPECT_THROW(take_down(library, LookId{99}), StoreError);
}

}  // namespace
}  // namespace quarterturn
