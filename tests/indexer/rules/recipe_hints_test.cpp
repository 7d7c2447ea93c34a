#include "indexer/rules/recipe_hints.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

using Sentences = std::vector<std::string>;

Recipe parted(std::optional<PartingSide> side, std::optional<double> from_centre_cm = {}) {
    Recipe recipe;
    recipe.parting_line = {side, from_centre_cm};
    return recipe;
}

Recipe with_comb(const std::string& where, const std::string& words) {
    Recipe recipe;
    Piece comb;
    comb.what = "leaf comb";
    comb.where = where;
    recipe.pieces = {comb};
    recipe.accessory = words;
    return recipe;
}

TEST(RecipeHints, SayWhereTheRecipePartsAndWhatWasAgreed) {
    const Recipe middle = parted(PartingSide::middle);
    const Recipe left = parted(PartingSide::left, 2);
    const Recipe right = parted(PartingSide::right, 3.5);
    EXPECT_EQ(recipe_hints(middle, left),
              Sentences{"The recipe of today parts 2 cm left of the centre; agreed was the "
                        "middle."});
    EXPECT_EQ(recipe_hints(left, right),
              Sentences{"The recipe of today parts 3.5 cm right of the centre; agreed was 2 cm "
                        "left of the centre."});
    EXPECT_EQ(recipe_hints(parted(PartingSide::left), middle),
              Sentences{"The recipe of today parts in the middle; agreed was her left."});
    EXPECT_EQ(recipe_hints(left, parted(PartingSide::none)),
              Sentences{"The recipe of today has no parting; agreed was 2 cm left of the centre."});
    EXPECT_EQ(recipe_hints(middle, parted(PartingSide::right)),
              Sentences{"The recipe of today parts on her right; agreed was the middle."});
    EXPECT_EQ(recipe_hints(left, parted(PartingSide::left, 3)).size(), 1);
}

TEST(RecipeHints, AreSilentWhereTheRecipesSayTheSameOrOneSaysNothing) {
    const Recipe left = parted(PartingSide::left, 2);
    EXPECT_EQ(recipe_hints(left, left), Sentences{});
    EXPECT_EQ(recipe_hints(left, parted({})), Sentences{});
    EXPECT_EQ(recipe_hints(parted({}), left), Sentences{});
    EXPECT_EQ(recipe_hints(left, parted(PartingSide::left)), Sentences{});
    EXPECT_EQ(recipe_hints(parted(PartingSide::middle, 0), parted(PartingSide::middle)),
              Sentences{});
}

TEST(RecipeHints, SayWhereTheAccessoryIsToSit) {
    const Recipe agreed = with_comb("above her left ear.", "Out last.");
    EXPECT_EQ(recipe_hints(agreed, with_comb("Above  her left ear", "out last")), Sentences{});
    EXPECT_EQ(recipe_hints(agreed, with_comb("", "")), Sentences{});
    EXPECT_EQ(recipe_hints(agreed, with_comb("over the bun", "On her LEFT.")),
              (Sentences{"The place of the leaf comb in the recipe of today: over the bun; agreed "
                         "was: above her left ear.",
                         "The accessory in the recipe of today: On her LEFT; agreed was: Out "
                         "last."}));
}

TEST(RecipeHints, DoNotTakePaddingOrAnotherPieceForTheAccessory) {
    const Recipe agreed = with_comb("above her left ear", "");
    Recipe padded = with_comb("over the bun", "");
    padded.pieces.front().kind = PieceKind::padding;
    EXPECT_EQ(recipe_hints(agreed, padded), Sentences{});
    Recipe pins = with_comb("over the bun", "");
    pins.pieces.front().what = "pearl pins";
    EXPECT_EQ(recipe_hints(agreed, pins), Sentences{});
}

}  // namespace
}  // namespace quarterturn
