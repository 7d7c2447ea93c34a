#include "indexer/rules/hair_facts.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

const std::vector<std::string> usual(usual_look_families.begin(), usual_look_families.end());

// "wavy, fine": the values of one fact, in order.
std::string values(const LookFacts& facts, Fact fact) {
    std::string text;
    for (const LookFact& each : facts) {
        if (each.fact == fact) text += (text.empty() ? "" : ", ") + each.value;
    }
    return text;
}

std::string read(const Recipe& recipe, Fact fact) {
    return values(read_facts("A look", recipe, usual), fact);
}

std::string family(const std::string& name, const std::vector<std::string>& families = usual) {
    return values(read_facts(name, {}, families), Fact::family);
}

Piece worn_piece(PieceKind kind, const char* what) {
    Piece piece;
    piece.kind = kind;
    piece.what = what;
    return piece;
}

struct Wording {
    const char* words;
    const char* value;
};

TEST(HairFacts, LengthInManyWordings) {
    for (const auto& [words, value] :
         {Wording{"down to the shoulder blades", "to the shoulder blades"},
          {"Shoulder-length", "to the shoulders"},
          {"just past the collar bone", "to the shoulders"},
          {"a chin long bob", "to the chin"},
          {"pixie", "short"},
          {"short at the nape", "short"},
          {"long", "to the shoulder blades"},
          {"reaches her WAIST", "to the waist"},
          {"as at the trial", ""},
          {"not long", ""},
          {"", ""}}) {
        Recipe recipe;
        recipe.hair_on_the_day.length = words;
        EXPECT_EQ(read(recipe, Fact::length), value) << words;
    }
}

TEST(HairFacts, TextureAndDensityInManyWordings) {
    for (const auto& [words, value] : {Wording{"fine to medium", "fine, medium"},
                                       {"straight, rather coarse", "coarse, straight"},
                                       {"a soft wave", "wavy"},
                                       {"tight curls", "coily"},
                                       {"curls, not tight", "curly"},
                                       {"no wave at all, straight", "straight"},
                                       {"refined", ""}}) {
        Recipe recipe;
        recipe.hair_on_the_day.texture = words;
        EXPECT_EQ(read(recipe, Fact::texture), value) << words;
    }
    for (const auto& [words, value] : {Wording{"plenty of it", "thick"},
                                       {"not thick, not thin", "medium"},
                                       {"rather sparse at the temples", "thin"},
                                       {"a lot", "thick"},
                                       {"like her sister's", ""}}) {
        Recipe recipe;
        recipe.hair_on_the_day.density = words;
        EXPECT_EQ(read(recipe, Fact::density), value) << words;
    }
}

TEST(HairFacts, ColourTakesTheLongerPhraseForWhatItIs) {
    for (const auto& [words, value] : {Wording{"chestnut with lighter ends", "brown, with lights"},
                                       {"dark blonde", "light brown"},
                                       {"blonde, balayage", "blonde, with lights"},
                                       {"strawberry-blonde", "red"},
                                       {"Natural copper", "red"},
                                       {"nearly black", "black"},
                                       {"salt and pepper", "grey"},
                                       {"brown without highlights", "brown"},
                                       {"coppery", ""}}) {
        Recipe recipe;
        recipe.hair_on_the_day.colour = words;
        EXPECT_EQ(read(recipe, Fact::colour), value) << words;
    }
}

TEST(HairFacts, WordsOfHairInGeneralCountWhereItsOwnFieldSaysNothing) {
    Recipe recipe;
    recipe.hair =
        "Nearly black, straight and thick, past the shoulder blades. Washed the evening before.";
    EXPECT_EQ(read(recipe, Fact::colour), "black");
    EXPECT_EQ(read(recipe, Fact::texture), "straight");
    EXPECT_EQ(read(recipe, Fact::density), "thick");
    EXPECT_EQ(read(recipe, Fact::length), "to the shoulder blades");
    recipe.hair_on_the_day.texture = "wavy";
    EXPECT_EQ(read(recipe, Fact::texture), "wavy");

    recipe = {};
    recipe.hair = "The ceremony look, let down. The curl from the morning is still in it.";
    EXPECT_TRUE(read_facts("A look", recipe, usual).empty()) << "that is no hair of her own";
}

TEST(HairFacts, PartingByItsLineThenByItsWords) {
    for (const auto& [words, value] :
         {Wording{"Side parting on her right, with the cowlick.", "right"},
          {"In the middle, 5 cm, then brushed back over it.", "middle"},
          {"left", "left"},
          {"none", "none"},
          {"no parting", "none"},
          {"From on her left to on her right", ""},
          {"As for the ceremony.", ""},
          {"right behind the hairline", ""}}) {
        Recipe recipe;
        recipe.parting = words;
        EXPECT_EQ(read(recipe, Fact::parting), value) << words;
        recipe.parting_line.side = PartingSide::left;
        EXPECT_EQ(read(recipe, Fact::parting), "left") << words;
    }
}

TEST(HairFacts, AccessoriesByPiecesThenByWords) {
    for (const auto& [words, value] : {Wording{"comb with gold leaves and pearls", "comb"},
                                       {"small cloth flower", "flowers"},
                                       {"pearl pin", "pins"},
                                       {"long veil on a comb", "comb, veil"},
                                       {"grandmother's brooch", "other"}}) {
        Recipe recipe;
        recipe.accessory = "Out last, before the tiara.";
        recipe.pieces = {worn_piece(PieceKind::padding, "crescent with a ribbon"),
                         worn_piece(PieceKind::accessory, words)};
        EXPECT_EQ(read(recipe, Fact::accessory), value) << words;
    }
    for (const auto& [words, value] : {Wording{"The same comb, the same place", "comb"},
                                       {"None.", "none"},
                                       {"no accessory", "none"},
                                       {"out before the hair is let down", ""},
                                       {"no veil", ""}}) {
        Recipe recipe;
        recipe.accessory = words;
        EXPECT_EQ(read(recipe, Fact::accessory), value) << words;
    }
}

TEST(HairFacts, FamilyByTheLooksName) {
    for (const auto& [name, value] : {Wording{"Low twisted bun, leaf comb", "low bun"},
                                      {"High coiled bun, pearl pins", "high bun"},
                                      {"Let down in waves, leaf comb", "down, waves"},
                                      {"Soft waves, small flowers", "waves"},
                                      {"Half-up with a fishtail braid", "half up, plait"},
                                      {"CHIGNON", "low bun"},
                                      {"Low sleek ponytail", "low ponytail"},
                                      {"Ponytail, low", ""},
                                      {"Low, with a very tidy round bun", ""},
                                      {"Reception", ""}}) {
        EXPECT_EQ(family(name), value) << name;
    }
}

TEST(HairFacts, FamilyOnlyOfHerOwnList) {
    const std::vector<std::string> hers{"Shell roll", "low bun"};
    EXPECT_EQ(family("Chignon", hers), "low bun");
    EXPECT_EQ(family("A shell in a roll over waves", hers), "Shell roll");
    EXPECT_EQ(family("Plaited crown", hers), "");
}

TEST(HairFacts, EachIsToldOnceAndWasNotSaidByHer) {
    Recipe recipe;
    recipe.hair_on_the_day.colour = "black, raven";
    recipe.pieces = {worn_piece(PieceKind::accessory, "pearl pin"),
                     worn_piece(PieceKind::accessory, "leaf pin")};
    const LookFacts facts = read_facts("Bun, low bun: a low bun", recipe, usual);
    EXPECT_EQ(facts, (LookFacts{{Fact::colour, "black", false},
                                {Fact::family, "low bun", false},
                                {Fact::accessory, "pins", false}}));
}

}  // namespace
}  // namespace quarterturn
