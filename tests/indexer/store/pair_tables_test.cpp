#include <gtest/gtest.h>

#include <SQLiteCpp/SQLiteCpp.h>

#include <array>

#include "indexer/store/found_head_table.h"
#include "indexer/store/hair_look_table.h"
#include "indexer/store/laid_pair_table.h"
#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class PairRecords : public testing::Test, public ExampleLibrary {
  protected:
    PairRecords() {
        first = library.photos().add(example_photo("QTA_0001.jpg"));
        second = library.photos().add(example_photo("QTA_0002.jpg"));
        third = library.photos().add(example_photo("QTA_0003.jpg"));
        settle();
    }

    // As if all pairs had been made.
    void settle() {
        for (const LookId each : changed()) library.pairs().keep_made({{each, made}});
    }

    std::vector<LookId> changed() { return library.pairs().to_make(100); }

    void tag(PhotoId photo, const Tags& tags) {
        library.history().apply({"tagged a photo", {{photo, tags}}, {}});
    }

    MadePair pair_of(Angle angle, PhotoId one, PhotoId other) const {
        return {{look, PairKind::before_and_after, 1, angle},
                one,
                other,
                SideNote::none,
                SideNote::none,
                parse_date("2026-11-21")};
    }

    PhotoId first, second, third;
    std::vector<MadePair> made;
};

TEST_F(PairRecords, KeepTheirNumberAndChoiceWhenMadeAnew) {
    library.pairs().keep_made(
        {{look, {pair_of(Angle::left, first, second), pair_of(Angle::back, second, third)}}});
    reopen();
    const auto before = library.pairs().all();
    ASSERT_EQ(before.size(), 2U);
    EXPECT_EQ(before.back().made, pair_of(Angle::left, first, second));
    const PairId left = before.back().id;
    const PairChoice choice{.first = first, .refused = true};
    library.pairs().choose(left, choice);

    library.pairs().keep_made({{look, {pair_of(Angle::left, first, third)}}});
    ASSERT_EQ(library.pairs().all().size(), 1U);
    EXPECT_EQ(library.pairs().find(left), (Pair{left, pair_of(Angle::left, first, third), choice}));

    library.pairs().keep_made({{look, {}}});
    EXPECT_TRUE(library.pairs().all().empty());
    EXPECT_EQ(library.pairs().find(left), std::nullopt);
    const auto places = library.pairs().places_of(std::array{look});
    ASSERT_EQ(places.size(), 1U) << "what she said is kept for when there is a pair again";
    EXPECT_EQ(places.front().choice, choice);
}

TEST_F(PairRecords, ArePinnedWithBothPhotosOnly) {
    library.pairs().keep_made({{look, {pair_of(Angle::left, first, second)}}});
    const PairId pair = library.pairs().all().front().id;
    EXPECT_THROW(library.pairs().choose(pair, {.first = first, .pinned = true}), StoreError);
    EXPECT_THROW(library.pairs().choose(PairId{99}, {}), StoreError);
    library.pairs().choose(pair, {.first = first, .second = second, .pinned = true});
    EXPECT_TRUE(library.pairs().find(pair)->choice.pinned);
}

TEST_F(PairRecords, AreReadFromAnIndexAlone) {
    SQLite::Statement plan(
        library.database().handle(),
        "EXPLAIN QUERY PLAN SELECT id, look, kind, number, angle, first, second, "
        "first_note, second_note, worn_on, chosen_first, chosen_second, "
        "pinned, refused, first_gone, second_gone FROM pair WHERE first IS NOT NULL AND second IS "
        "NOT "
        "NULL ORDER BY worn_on DESC, id DESC");
    std::string steps;
    while (plan.executeStep()) steps += plan.getColumn(3).getString() + '\n';
    EXPECT_NE(steps.find("COVERING INDEX pair_newest"), std::string::npos) << steps;
    EXPECT_EQ(steps.find("TEMP B-TREE"), std::string::npos) << steps;
}

// Whatever a pair or a fact is made from notes the look, whoever changes it and however.
TEST_F(PairRecords, NoteTheLookWhenWhatTheyAreMadeFromChanges) {
    const auto expect_noted = [&](const char* what) {
        EXPECT_EQ(changed(), std::vector{look}) << what;
        settle();
        EXPECT_TRUE(changed().empty()) << what;
    };
    Tags tags;
    tags.look = look;
    tag(first, tags);
    expect_noted("a photo tagged with the look");
    library.history().undo();
    expect_noted("undone");
    library.history().redo();
    expect_noted("done again");
    tags.look.reset();
    tags.sitting = trial;
    tags.stage = Stage::before;
    tag(first, tags);
    expect_noted("a before photo of its sitting, which counts for every look of it");
    library.photos().set_measured(first, {5, 0, 0.5, 0, 0}, 1, {}, {Flaw::moved});
    expect_noted("a photo measured");
    library.photos().set_measured(second, {5, 0, 0.5, 0, 0}, 1, {}, {});
    EXPECT_TRUE(changed().empty()) << "a photo of no look";

    Recipe recipe;
    recipe.hair = "thick";
    library.recipes().save(look, recipe, at("2026-11-07T12:00:00"));
    expect_noted("the recipe");
    Look renamed = library.looks().find(look).value();
    renamed.name = "Plait";
    library.looks().change(renamed);
    expect_noted("its name");
    Sitting moved = library.sittings().find(trial).value();
    moved.kind = SittingKind::wedding_day;
    library.sittings().change(moved);
    expect_noted("the kind of a sitting");
    Wedding later = library.weddings().find(wedding).value();
    later.date = parse_date("2026-12-05").value();
    library.weddings().change(later);
    expect_noted("the day of the wedding");
    library.settings().set(families_setting, "plait");
    expect_noted("her list of families");
    library.settings().clear(families_setting);
    expect_noted("the usual list of families");

    made = {pair_of(Angle::left, first, second)};
    library.pairs().keep_made({{look, made}});
    library.pairs().choose(library.pairs().all().front().id,
                           {.first = first, .second = second, .pinned = true});
    expect_noted("a pin");
}

TEST_F(PairRecords, FactsThatSheSaysGoBeforeThoseThatWereRead) {
    const LookFacts read{{Fact::texture, "fine", false},
                         {Fact::colour, "brown", false},
                         {Fact::colour, "with lights", false}};
    library.look_facts().keep_read({{look, read}});
    EXPECT_EQ(library.look_facts().of(look), read);
    library.look_facts().say(look, Fact::colour, std::vector<std::string>{"copper", "red"});
    library.look_facts().say(look, Fact::colour, std::vector<std::string>{"red"});
    reopen();
    const LookFacts hers{{Fact::texture, "fine", false}, {Fact::colour, "red", true}};
    EXPECT_EQ(library.look_facts().of(look), hers);
    EXPECT_EQ(library.look_facts().all(), (std::map<LookId, LookFacts>{{look, hers}}));
    library.look_facts().keep_read({{look, {{Fact::colour, "black", false}}}});
    EXPECT_EQ(library.look_facts().of(look), (LookFacts{{Fact::colour, "red", true}}));
    library.look_facts().say(look, Fact::colour, {});
    EXPECT_EQ(library.look_facts().of(look), (LookFacts{{Fact::colour, "black", false}}));
}

TEST_F(PairRecords, FactsRefuseWhatCannotBeSaid) {
    const std::vector<std::string> blank{" "};
    EXPECT_THROW(library.look_facts().say(look, Fact::colour, blank), StoreError);
    EXPECT_THROW(library.look_facts().say(look, Fact::year, std::vector<std::string>{"2026"}),
                 StoreError);
    EXPECT_THROW(
        library.look_facts().say(LookId{99}, Fact::colour, std::vector<std::string>{"red"}),
        StoreError);
    EXPECT_TRUE(library.look_facts().of(look).empty());
}

TEST_F(PairRecords, FiltersAreKeptUnderHerOwnNames) {
    const PairFilter buns{
        {{Fact::family, {"low bun", "high bun"}}, {Fact::season, {"autumn"}}}, "comb nape", false};
    library.pair_filters().keep({"Herbst: Röschen", {{}, "rose", false}});
    library.pair_filters().keep({"Autumn buns", {{}, "", true}});
    library.pair_filters().keep({"AUTUMN BUNS", buns});
    reopen();
    EXPECT_EQ(library.pair_filters().find("autumn buns"), buns);
    const std::vector<KeptPairFilter> all{{"AUTUMN BUNS", buns},
                                          {"Herbst: Röschen", {{}, "rose", false}}};
    EXPECT_EQ(library.pair_filters().all(), all);
    library.pair_filters().remove("Autumn Buns");
    EXPECT_EQ(library.pair_filters().find("autumn buns"), std::nullopt);
    EXPECT_THROW(library.pair_filters().remove("autumn buns"), StoreError);
    EXPECT_THROW(library.pair_filters().keep({" ", buns}), StoreError);
}

TEST_F(PairRecords, HairIsMeasuredOnceUntilThePhotoIsShownTheOtherWayRound) {
    library.pairs().keep_made(
        {{look, {pair_of(Angle::left, first, second), pair_of(Angle::back, third, second)}}});
    HairLookTable table(library.database(), 1);
    EXPECT_EQ(table.still_to_measure(), std::vector{second});
    const HairLook hair{{0, 255, 16}, {1}, {127, 128}};
    table.keep(library.photos().find(second).value(), hair);
    reopen();
    EXPECT_EQ(HairLookTable(library.database(), 1).of(second), hair);
    EXPECT_EQ(HairLookTable(library.database(), 1).of_pairs(Angle::left).at(0).hair, hair);
    EXPECT_EQ(HairLookTable(library.database(), 1).of_pairs({}).size(), 2U);
    EXPECT_TRUE(HairLookTable(library.database(), 1).of_pairs(Angle::front).empty());
    EXPECT_TRUE(HairLookTable(library.database(), 1).still_to_measure().empty());
    EXPECT_EQ(HairLookTable(library.database(), 2).still_to_measure(), std::vector{second})
        << "a newer measure";
    Tags mirrored;
    mirrored.mirrored = true;
    tag(second, mirrored);
    EXPECT_FALSE(HairLookTable(library.database(), 1).of(second).told());
    EXPECT_FALSE(HairLookTable(library.database(), 1).of_pairs(Angle::left).at(0).hair.told());
    EXPECT_EQ(HairLookTable(library.database(), 1).still_to_measure(), std::vector{second});
}

TEST_F(PairRecords, HeadsThatWereFoundAreKeptAsLongAsTheirPhotoAndTheSearch) {
    FoundHeadTable heads(library.database(), 2);
    const std::map<PhotoId, FoundHead> found{{first, HeadBox{0.25, 0.125, 0.5, 0.625}},
                                             {second, std::nullopt}};
    heads.keep(found);
    heads.keep({{PhotoId{999}, HeadBox{}}});
    reopen();
    const std::array all{first, second, third, PhotoId{999}};
    EXPECT_EQ(FoundHeadTable(library.database(), 2).of(all), found);
    EXPECT_TRUE(FoundHeadTable(library.database(), 3).of(all).empty());
    FoundHeadTable(library.database(), 2).keep({{second, HeadBox{0, 0, 1, 1}}});
    EXPECT_EQ(FoundHeadTable(library.database(), 2).of(all).at(second), (HeadBox{0, 0, 1, 1}));
}

TEST_F(PairRecords, AnAlignmentHoldsForTheSameTwoPhotosShownTheSameWay) {
    library.pairs().keep_made({{look, {pair_of(Angle::left, first, second)}}});
    const Pair pair = library.pairs().all().front();
    const KeptLaying laying{{1.25, -0.01, 0.5, 0.125, true}, 0.75, 1.5, {}, 0.25, 0.5};
    const auto table = [&](int version) { return LaidPairTable(library.database(), version); };
    const auto kept_by = [&](int version) -> std::optional<KeptLaying> {
        const auto all = table(version).of(std::array{pair.id});
        return all.empty() ? std::nullopt : std::optional(all.begin()->second);
    };
    const auto keep = [&] { table(1).keep(pair.id, laying); };
    const auto kept = [&] { return kept_by(1); };
    keep();
    reopen();
    EXPECT_EQ(kept(), laying);
    EXPECT_EQ(kept_by(2), std::nullopt) << "a newer way to find it";

    library.head_points().set(second, {{0.5, 0.1}, {0.5, 0.6}});
    EXPECT_EQ(kept(), std::nullopt) << "points set";
    keep();
    library.head_points().set(second, {{0.5, 0.2}, {0.5, 0.6}});
    EXPECT_EQ(kept(), std::nullopt) << "points moved";
    keep();
    library.head_points().clear(second);
    EXPECT_EQ(kept(), std::nullopt) << "points cleared";
    keep();
    Tags tags;
    tags.mirrored = true;
    tag(first, tags);
    EXPECT_EQ(kept(), std::nullopt) << "shown the other way round";
}

TEST_F(PairRecords, RememberThatAChosenPhotoWasRemoved) {
    library.pairs().keep_made({{look, {pair_of(Angle::left, first, second)}}});
    const PairId pair = library.pairs().all().front().id;
    library.pairs().choose(pair, {.first = first, .second = second, .pinned = true});
    settle();
    library.database().handle().exec("DELETE FROM photo WHERE id = " +
                                     std::to_string(second.value));
    EXPECT_EQ(changed(), std::vector{look});
    library.pairs().keep_made({{look, {}}});
    const auto left = library.pairs().without_photos();
    ASSERT_EQ(left.size(), 1U) << "it is told that the pair is not there any more";
    EXPECT_EQ(left.front().choice,
              (PairChoice{.first = first, .pinned = true, .second_gone = true}));
    EXPECT_TRUE(library.pairs().these(std::array{pair}).empty());
}

TEST_F(PairRecords, AreReadByNumberInTheOrderAsked) {
    library.pairs().keep_made(
        {{look, {pair_of(Angle::left, first, second), pair_of(Angle::back, second, third)}}});
    const auto all = library.pairs().all();
    const auto these =
        library.pairs().these(std::array{all[1].id, PairId{99}, all[0].id, all[1].id});
    EXPECT_EQ(these, (std::vector{all[1], all[0], all[1]}));
}

}  // namespace
}  // namespace quarterturn
