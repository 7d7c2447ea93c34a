#include "indexer/rules/hair_facts.h"

#include <algorithm>

#include "indexer/rules/plain_words.h"

namespace quarterturn {
namespace {

struct Wording {
    std::string_view words;
    std::string_view value;
};
using Wordings = std::span<const Wording>;

// For the fields that speak of nothing else. Longer phrases are looked for first.
constexpr Wording length_phrases[] = {
    {"ear length", "short"},
    {"pixie", "short"},
    {"cropped", "short"},
    {"crop", "short"},
    {"short", "short"},
    {"chin", "to the chin"},
    {"jaw", "to the chin"},
    {"bob", "to the chin"},
    {"collar bone", "to the shoulders"},
    {"collarbone", "to the shoulders"},
    {"shoulder", "to the shoulders"},
    {"shoulders", "to the shoulders"},
    {"shoulder blade", "to the shoulder blades"},
    {"shoulder blades", "to the shoulder blades"},
    {"middle of the back", "to the shoulder blades"},
    {"mid back", "to the shoulder blades"},
    {"long", "to the shoulder blades"},
    {"waist", "to the waist"},
    {"hip", "to the waist"},
    {"hips", "to the waist"},
};
constexpr Wording texture_phrases[] = {
    {"fine", "fine"},         {"medium", "medium"}, {"coarse", "coarse"}, {"wiry", "coarse"},
    {"straight", "straight"}, {"wave", "wavy"},     {"waves", "wavy"},    {"wavy", "wavy"},
    {"curl", "curly"},        {"curls", "curly"},   {"curly", "curly"},   {"ringlets", "curly"},
    {"tight curls", "coily"}, {"coil", "coily"},    {"coils", "coily"},   {"coily", "coily"},
};
constexpr Wording density_phrases[] = {
    {"thin", "thin"},        {"sparse", "thin"},     {"little of it", "thin"}, {"not much", "thin"},
    {"low", "thin"},         {"medium", "medium"},   {"average", "medium"},    {"normal", "medium"},
    {"not thick", "medium"}, {"thick", "thick"},     {"dense", "thick"},       {"plenty", "thick"},
    {"a lot", "thick"},      {"lots", "thick"},      {"full", "thick"},        {"heavy", "thick"},
    {"high", "thick"},       {"not thin", "medium"},
};
constexpr Wording colour_phrases[] = {
    {"black", "black"},
    {"raven", "black"},
    {"dark brown", "dark brown"},
    {"espresso", "dark brown"},
    {"brown", "brown"},
    {"brunette", "brown"},
    {"chestnut", "brown"},
    {"chocolate", "brown"},
    {"light brown", "light brown"},
    {"mousy", "light brown"},
    {"dark blonde", "light brown"},
    {"dark blond", "light brown"},
    {"blonde", "blonde"},
    {"blond", "blonde"},
    {"golden", "blonde"},
    {"honey", "blonde"},
    {"strawberry blonde", "red"},
    {"red", "red"},
    {"copper", "red"},
    {"auburn", "red"},
    {"ginger", "red"},
    {"salt and pepper", "grey"},
    {"grey", "grey"},
    {"gray", "grey"},
    {"silver", "grey"},
    {"white", "white"},
    {"highlights", "with lights"},
    {"highlighted", "with lights"},
    {"balayage", "with lights"},
    {"lighter ends", "with lights"},
    {"lighter lengths", "with lights"},
    {"lighter pieces", "with lights"},
    {"lighter strands", "with lights"},
};
// For hair in general: only what can mean nothing else there.
constexpr Wording hair_lengths[] = {
    {"short hair", "short"},
    {"to the chin", "to the chin"},
    {"chin length", "to the chin"},
    {"to the collar bone", "to the shoulders"},
    {"to the collarbone", "to the shoulders"},
    {"to the shoulders", "to the shoulders"},
    {"shoulder length", "to the shoulders"},
    {"to the shoulder blades", "to the shoulder blades"},
    {"past the shoulders", "to the shoulder blades"},
    {"past the shoulder blades", "to the shoulder blades"},
    {"long hair", "to the shoulder blades"},
    {"to the waist", "to the waist"},
};
constexpr Wording hair_textures[] = {
    {"fine", "fine"},   {"coarse", "coarse"},      {"straight", "straight"},
    {"wavy", "wavy"},   {"natural wave", "wavy"},  {"wave of its own", "wavy"},
    {"curly", "curly"}, {"natural curl", "curly"}, {"curl of its own", "curly"},
    {"coily", "coily"},
};
constexpr Wording hair_densities[] = {
    {"thin", "thin"},
    {"thick", "thick"},
    {"plenty of it", "thick"},
    {"a lot of it", "thick"},
};
constexpr Wording parting_phrases[] = {
    {"in the middle", "middle"},   {"middle parting", "middle"}, {"centre parting", "middle"},
    {"center parting", "middle"},  {"in the centre", "middle"},  {"in the center", "middle"},
    {"on her left", "left"},       {"on the left", "left"},      {"left side", "left"},
    {"left parting", "left"},      {"to her left", "left"},      {"on her right", "right"},
    {"on the right", "right"},     {"right side", "right"},      {"right parting", "right"},
    {"to her right", "right"},     {"no parting", "none"},       {"without parting", "none"},
    {"without a parting", "none"},
};
constexpr Wording accessory_phrases[] = {
    {"comb", "comb"},
    {"combs", "comb"},
    {"pin", "pins"},
    {"pins", "pins"},
    {"flower", "flowers"},
    {"flowers", "flowers"},
    {"blossom", "flowers"},
    {"blossoms", "flowers"},
    {"wreath", "flowers"},
    {"veil", "veil"},
    {"tiara", "tiara"},
    {"diadem", "tiara"},
    {"hair band", "hair band"},
    {"headband", "hair band"},
    {"ribbon", "ribbon"},
    {"ribbons", "ribbon"},
    {"bow", "ribbon"},
    {"clip", "clip"},
    {"slide", "clip"},
    {"hat", "hat"},
    {"fascinator", "hat"},
    {"hair vine", "hair vine"},
    {"vine", "hair vine"},
};
constexpr Wording family_phrases[] = {
    {"chignon", "low bun"},
    {"low knot", "low bun"},
    {"bun at the nape", "low bun"},
    {"knot at the nape", "low bun"},
    {"top knot", "high bun"},
    {"bun at the crown", "high bun"},
    {"low tail", "low ponytail"},
    {"tail at the nape", "low ponytail"},
    {"half pinned", "half up"},
    {"worn loose", "down"},
    {"plaits", "plait"},
    {"plaited", "plait"},
    {"braid", "plait"},
    {"braids", "plait"},
    {"braided", "plait"},
    {"wave", "waves"},
    {"wavy", "waves"},
};

void add(LookFacts& facts, Fact fact, std::string_view value) {
    const LookFact found{fact, std::string(value), false};
    if (std::ranges::find(facts, found) == facts.end()) facts.push_back(found);
}

bool has_fact(const LookFacts& facts, Fact fact) {
    return std::ranges::any_of(facts, [&](const LookFact& each) { return each.fact == fact; });
}

// Words that belong to a phrase are not looked at again: dark blonde is not blonde.
void read_phrases(LookFacts& facts, Fact fact, std::string_view text, Wordings phrases) {
    std::vector<Wording> longest_first(phrases.begin(), phrases.end());
    std::ranges::stable_sort(longest_first, std::greater{},
                             [](const Wording& phrase) { return phrase.words.size(); });
    PlainWords words(text);
    for (const Wording& phrase : longest_first) {
        if (words.take(phrase.words)) add(facts, fact, phrase.value);
    }
}

void read_hair(LookFacts& facts, const Recipe& recipe) {
    const HairOnTheDay& hair = recipe.hair_on_the_day;
    const auto read = [&](Fact fact, const std::string& field, Wordings own, Wordings in_general) {
        read_phrases(facts, fact, field, own);
        if (!has_fact(facts, fact)) read_phrases(facts, fact, recipe.hair, in_general);
    };
    read(Fact::length, hair.length, length_phrases, hair_lengths);
    if (!facts.empty()) facts.resize(1);  // hair has one length: what the longest phrase says
    read(Fact::texture, hair.texture, texture_phrases, hair_textures);
    read(Fact::density, hair.density, density_phrases, hair_densities);
    read(Fact::colour, hair.colour, colour_phrases, colour_phrases);
}

// A look has one parting; where the words name several it is not sure.
void read_parting(LookFacts& facts, const Recipe& recipe) {
    if (recipe.parting_line.side) {
        add(facts, Fact::parting, word(*recipe.parting_line.side));
        return;
    }
    if (const auto side = parse_parting_side(PlainWords(recipe.parting).text())) {
        add(facts, Fact::parting, word(*side));
        return;
    }
    LookFacts found;
    read_phrases(found, Fact::parting, recipe.parting, parting_phrases);
    if (found.size() == 1) facts.push_back(found.front());
}

void read_accessory(LookFacts& facts, const Recipe& recipe) {
    for (const Piece& piece : recipe.pieces) {
        if (piece.kind != PieceKind::accessory || piece.what.empty()) continue;
        LookFacts found;
        read_phrases(found, Fact::accessory, piece.what, accessory_phrases);
        if (found.empty()) add(found, Fact::accessory, "other");
        for (const LookFact& fact : found) add(facts, fact.fact, fact.value);
    }
    if (has_fact(facts, Fact::accessory)) return;
    const std::string words = PlainWords(recipe.accessory).text();
    if (words == "none" || words == "no accessory") return add(facts, Fact::accessory, "none");
    read_phrases(facts, Fact::accessory, recipe.accessory, accessory_phrases);
}

void read_family(LookFacts& facts, std::string_view name, std::span<const std::string> families) {
    constexpr int words_between = 2;
    for (const std::string& family : families) {
        if (PlainWords(name).say_in_order(family, words_between)) add(facts, Fact::family, family);
    }
    LookFacts others;
    read_phrases(others, Fact::family, name, family_phrases);
    for (const LookFact& fact : others) {
        const bool hers = std::ranges::find(families, fact.value) != families.end();
        if (hers) add(facts, Fact::family, fact.value);
    }
}

Wordings phrases_of(Fact fact) {
    switch (fact) {
        case Fact::length:
            return length_phrases;
        case Fact::texture:
            return texture_phrases;
        case Fact::density:
            return density_phrases;
        case Fact::colour:
            return colour_phrases;
        case Fact::parting:
            return parting_phrases;
        case Fact::accessory:
            return accessory_phrases;
        default:
            return {};
    }
}

}  // namespace

LookFacts read_facts(const std::string& look_name, const Recipe& recipe,
                     std::span<const std::string> families) {
    LookFacts facts;
    read_hair(facts, recipe);
    read_family(facts, look_name, families);
    read_parting(facts, recipe);
    read_accessory(facts, recipe);
    std::ranges::sort(facts);
    return facts;
}

std::vector<std::string> usual_values(Fact fact) {
    std::vector<std::string> values;
    for (const Wording& wording : phrases_of(fact)) {
        const std::string value(wording.value);
        if (std::ranges::find(values, value) == values.end()) values.push_back(value);
    }
    if (fact == Fact::accessory) values.insert(values.end(), {"other", "none"});
    return values;
}

}  // namespace quarterturn
