// Pairs in a library, and the index of them against a plain scan of its records.

#include "indexer/looks/pairs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

#include "indexer/rules/hair_facts.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

const Date looked_on = parse_date("2026-11-07").value();

struct PairedLibrary : ExampleLibrary {
    PhotoId add(const std::string& name, Stage stage, Angle angle, std::optional<LookId> whose = {},
                double focus = 5) {
        Photo photo = example_photo(name, taken_at("2026-11-07T10:30:00"));
        photo.measures = {focus, 0, 0.5, 0, 0};
        photo.tags.sitting = trial;
        photo.tags.look = whose;
        photo.tags.stage = stage;
        photo.tags.angle = angle;
        return library.photos().add(photo);
    }

    void tag(PhotoId photo, auto change) {
        Tags tags = library.photos().find(photo)->tags;
        change(tags);
        library.history().apply({"tagged a photo", {{photo, tags}}, {}});
    }

    std::vector<Pair> found(const PairFilter& filter = {}) {
        return PairWall(library, looked_on).find(library, filter).pairs;
    }
};

class PairsOfALibrary : public testing::Test, public PairedLibrary {
  protected:
    PhotoId before = add("QTA_0001.jpg", Stage::before, Angle::back);
    PhotoId after = add("QTA_0002.jpg", Stage::after, Angle::back, look, 6);
    PhotoId softer = add("QTA_0003.jpg", Stage::after, Angle::back, look, 2);
};

TEST_F(PairsOfALibrary, AreThereAsSoonAsPhotosAreTaggedAndFollowTheirTags) {
    ASSERT_EQ(found().size(), 1U);
    const Pair pair = found().front();
    EXPECT_EQ(pair.made.first, before);
    EXPECT_EQ(pair.made.second, after);
    EXPECT_EQ(pair.made.worn_on, parse_date("2026-11-21"));

    tag(after, [](Tags& tags) { tags.angle = Angle::left; });
    EXPECT_EQ(found().front().made.second, softer);
    EXPECT_EQ(found().front().id, pair.id) << "it keeps its number";
    library.history().undo();
    EXPECT_EQ(found(), std::vector{pair});
    tag(before, [](Tags& tags) { tags.stage = Stage::during; });
    EXPECT_TRUE(found().empty());
}

TEST_F(PairsOfALibrary, TakeTheFrameSheChoseAndNoOther) {
    const PairId pair = found().front().id;
    choose_frames(library, pair, std::nullopt, softer);
    EXPECT_EQ(found().front().made.second, softer);
    EXPECT_THROW(choose_frames(library, pair, after, std::nullopt), StoreError);
    EXPECT_EQ(found().front().made.second, softer) << "what she said before still holds";
    choose_frames(library, pair, std::nullopt, std::nullopt);
    EXPECT_EQ(found().front().made.second, after);
}

TEST_F(PairsOfALibrary, StayPinnedWhenAPhotoIsTaggedOtherwise) {
    const PairId pair = found().front().id;
    choose_frames(library, pair, std::nullopt, softer);
    pin(library, pair, true);
    tag(softer, [](Tags& tags) { tags.stage = Stage::during; });
    ASSERT_EQ(found().size(), 1U);
    EXPECT_EQ(found().front().made.second, softer);
    EXPECT_EQ(found().front().made.second_note, SideNote::tagged_otherwise);
    EXPECT_EQ(found().front().made.first_note, SideNote::none);
    pin(library, pair, false);
    EXPECT_EQ(found().front().made.second, after);
    EXPECT_EQ(found().front().made.second_note, SideNote::none);
}

TEST_F(PairsOfALibrary, AreLeftOutWhenRefusedAndCanBeTakenBack) {
    const PairId pair = found().front().id;
    refuse(library, pair, true);
    EXPECT_TRUE(found().empty());
    EXPECT_EQ(found({.refused = true}).size(), 1U);
    refuse(library, pair, false);
    EXPECT_EQ(found().size(), 1U);
    EXPECT_THROW(refuse(library, PairId{99}, true), StoreError);
}

TEST_F(PairsOfALibrary, AreFoundByWordsOfRecipeAndNotesAndCountedByFacts) {
    Recipe recipe;
    recipe.hair_on_the_day.colour = "chestnut";
    recipe.sections = "Cross the grips at the nape.";
    library.recipes().save(look, recipe, at("2026-11-07T12:00:00"));
    EXPECT_EQ(found({.words = "grips nape"}).size(), 1U);
    EXPECT_TRUE(found({.words = "grips crown"}).empty());
    tag(before, [](Tags& tags) { tags.note = "damp at the crown"; });
    EXPECT_EQ(found({.words = "crown"}).size(), 1U);
    const auto counts =
        PairWall(library, looked_on).find(library, {{{Fact::season, {"spring"}}}}).counts;
    EXPECT_EQ(counts.at(Fact::season), (std::map<std::string, int>{{"autumn", 1}}));
    EXPECT_EQ(counts.at(Fact::colour), (std::map<std::string, int>{{"brown", 0}}));
    EXPECT_EQ(counts.at(Fact::family), (std::map<std::string, int>{{"low bun", 0}}));
}

// A random library: looks with words in their recipes, photos tagged anyhow, then changes.
struct Story : PairedLibrary {
    std::vector<LookId> looks{look};
    std::vector<PhotoId> photos;

    Story() {
        for (int left = *rc::gen::inRange(0, 4); left > 0; --left) {
            Look more = library.looks().find(look).value();
            more.name = *rc::gen::element("Plait with comb", "Low bun", "Half up, waves", "Third");
            more.worn = *rc::gen::element(Worn::ceremony, Worn::evening);
            if (*rc::gen::inRange(0, 2) == 0) more.wedding.reset();
            looks.push_back(library.looks().add(more));
        }
        for (int left = *rc::gen::inRange(0, 25); left > 0; --left) go_on();
    }

    template <class Value>
    static Value any(const std::vector<Value>& values) {
        return values[*rc::gen::inRange<std::size_t>(0, values.size())];
    }

    void go_on() {
        switch (*rc::gen::inRange(0, 8)) {
            case 0:
                return write_recipe();
            case 1:
                return retag();
            case 2:
                library.history().undo();
                return;
            case 3:
                return refuse_one();
            case 4:
                return say_something();
            default:
                photos.push_back(add("QTB_" + std::to_string(photos.size()) + ".jpg",
                                     *rc::gen::element(Stage::before, Stage::after),
                                     *rc::gen::element(Angle::left, Angle::back), any(looks),
                                     *rc::gen::element(3.0, 5.0, 8.0)));
        }
    }

    void write_recipe() {
        Recipe recipe;
        recipe.hair_on_the_day.colour =
            *rc::gen::element("black", "dark blonde", "red, highlights");
        recipe.hair_on_the_day.texture = *rc::gen::element("fine", "wavy", "");
        recipe.parting = *rc::gen::element("left", "in the middle", "as it falls");
        library.recipes().save(any(looks), recipe, at("2026-11-07T12:00:00"));
    }

    void retag() {
        if (photos.empty()) return;
        tag(any(photos), [&](Tags& tags) {
            tags.look = any(looks);
            tags.note = *rc::gen::element("", "comb", "grip");
        });
    }

    void refuse_one() {
        const auto pairs = found();
        if (!pairs.empty()) refuse(library, any(pairs).id, true);
    }

    void say_something() {
        library.look_facts().say(any(looks), Fact::texture,
                                 std::vector<std::string>{*rc::gen::element("coarse", "fine")});
    }

    static PairFilter any_filter() {
        PairFilter filter;
        const auto maybe = [&](Fact fact, std::vector<std::string> values) {
            if (*rc::gen::inRange(0, 4) == 0) filter.values[fact] = std::move(values);
        };
        maybe(Fact::family, {"low bun", "plait"});
        maybe(Fact::colour, {*rc::gen::element<std::string>("black", "red", "with lights")});
        maybe(Fact::texture, {"fine"});
        maybe(Fact::worn, {"evening"});
        maybe(Fact::angle, {"left"});
        maybe(Fact::year, {"2026"});
        filter.words = *rc::gen::element<std::string>("", "", "comb", "grip", "mira");
        filter.refused = *rc::gen::inRange(0, 4) == 0;
        return filter;
    }
};

// What is said of a look by itself, one "fact=value" each.
std::set<std::string> said_of_look(Library& library, const Look& look) {
    const auto recipe = library.recipes().current(look.id);
    const std::vector<std::string> families(usual_look_families.begin(), usual_look_families.end());
    std::set<std::string> said;
    const LookFacts now = library.look_facts().of(look.id);
    const bool own_texture = std::ranges::any_of(now, &LookFact::said);
    for (const LookFact& fact :
         read_facts(look.name, recipe ? recipe->recipe : Recipe{}, families)) {
        if (fact.fact == Fact::texture && own_texture) continue;
        said.insert(std::string(word(fact.fact)) + "=" + fact.value);
    }
    for (const LookFact& fact : now) {
        if (fact.said) said.insert(std::string(word(fact.fact)) + "=" + fact.value);
    }
    return said;
}

bool of_one_sitting(const Look& one, const Look& other) {
    return std::ranges::find_first_of(one.sittings, other.sittings) != one.sittings.end();
}

// All that is said of a pair; of hair untold of, what her other looks of the sitting say.
std::set<std::string> said_of(Library& library, const MadePair& pair) {
    const Look look = library.looks().find(pair.place.look).value();
    const std::set<std::string> of_hair{"length=", "texture=", "density=", "colour="};
    const std::set<std::string> own = said_of_look(library, look);
    std::set<std::string> said = own;
    for (const Look& other : library.looks().of_client(look.client)) {
        if (!of_one_sitting(look, other)) continue;
        for (const std::string& each : said_of_look(library, other)) {
            const std::string fact = each.substr(0, each.find('=') + 1);
            const bool told = std::ranges::any_of(
                own, [&](const std::string& mine) { return mine.starts_with(fact); });
            if (of_hair.contains(fact) && !told) said.insert(each);
        }
    }
    said.insert("worn=" + std::string(word(look.worn)));
    said.insert("angle=" + std::string(word(pair.place.angle)));
    said.insert("kind=" + std::string(word(pair.place.kind)));
    said.insert("year=2026");
    said.insert("season=autumn");
    return said;
}

bool passes(const std::set<std::string>& said, const FactValues& filter,
            std::optional<Fact> leaving_out = {}) {
    return std::ranges::all_of(filter, [&](const auto& each) {
        if (each.first == leaving_out) return true;
        return std::ranges::any_of(each.second, [&](const std::string& value) {
            return said.contains(std::string(word(each.first)) + "=" + value);
        });
    });
}

bool words_found(Library& library, const Pair& pair, const std::string& words) {
    if (words.empty()) return true;
    for (const PhotoId id : {pair.made.first, pair.made.second}) {
        const Photo photo = library.photos().find(id).value();
        const std::string look = library.looks().find(pair.made.place.look)->name;
        for (const std::string& text : {photo.tags.note, look, std::string("mira okonjo")}) {
            if (text.find(words) != std::string::npos) return true;
        }
    }
    return false;
}

RC_GTEST_PROP(PairIndexOfALibrary, FindsAndCountsWhatAPlainScanOfItDoes, ()) {
    Story story;
    Library& library = story.library;
    const PairFilter filter = Story::any_filter();
    const auto result = PairWall(library, looked_on).find(library, filter);
    std::vector<Pair> expected;
    FactCounts counts;
    for (const LookId look : story.looks) {
        for (const Pair& pair : library.pairs().places_of(std::array{look})) {
            if (!pair.made.first) continue;
            const auto said = said_of(library, pair.made);
            const bool looked_at =
                words_found(library, pair, filter.words) && pair.choice.refused == filter.refused;
            if (looked_at && passes(said, filter.values)) expected.push_back(pair);
            for (const std::string& each : said) {
                const std::size_t equals = each.find('=');
                const Fact fact = parse_fact(each.substr(0, equals)).value();
                counts[fact][each.substr(equals + 1)] +=
                    looked_at && passes(said, filter.values, fact) ? 1 : 0;
            }
        }
    }
    std::ranges::sort(expected, [](const Pair& one, const Pair& other) {
        return std::pair(one.made.worn_on.value(), one.id) >
               std::pair(other.made.worn_on.value(), other.id);
    });
    RC_ASSERT(result.pairs == expected);
    RC_ASSERT(result.counts == counts);
}

}  // namespace
}  // namespace quarterturn
