#include "indexer/looks/kit_list.h"

#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

class KitListTest : public testing::Test, public ExampleLibrary {
  protected:
    // What the look needs, in place of what it needed before.
    void needs(int grips, const std::string& product = "mousse") {
        Recipe recipe;
        recipe.prep = {{product, "two walnuts", "roots"}};
        recipe.build = {{"pin", 5, {{"grip", "brown", grips, false}}}};
        library.recipes().save(look, recipe, at("2026-11-07T12:00"));
    }
    KitList list() { return kit_list(library, wedding); }
    KitLine line(const std::string& name) {
        const KitList all = list();
        const auto found = lines_called(all, name);
        EXPECT_EQ(found.size(), 1U) << name;
        return *found.at(0);
    }
    void tick(const std::string& name) {
        library.kit_ticks().set(wedding, line(name).item, line(name).count);
    }
};

TEST_F(KitListTest, ATickOutlivesARestart) {
    needs(10);
    tick("grip, brown");
    reopen();
    EXPECT_TRUE(line("grip").ticked);
    EXPECT_EQ(packed_text(list()), "1 of 2 packed.");
    library.kit_ticks().clear(wedding, line("grip").item);
    EXPECT_FALSE(line("grip").ticked);
}

TEST_F(KitListTest, ATickStaysWithItsItemAndSaysWhenThereIsMore) {
    needs(10);
    tick("grip");
    needs(15);
    EXPECT_EQ(line("grip").count, 18);
    EXPECT_EQ(line("grip").ticked, 12);
    EXPECT_EQ(grown_text(line("grip")), "6 more than when it was ticked.");
    EXPECT_EQ(packed_text(list()), "1 of 2 packed, 1 of them needs more.");
    tick("grip");
    EXPECT_EQ(grown_text(line("grip")), "");
    needs(5);
    EXPECT_TRUE(line("grip").ticked);
    EXPECT_EQ(grown_text(line("grip")), "");
}

TEST_F(KitListTest, AWiderMarginIsMoreToPack) {
    needs(10);
    tick("grip");
    set_spare_percent(library, 50);
    EXPECT_EQ(grown_text(line("grip")), "3 more than when it was ticked.");
}

TEST_F(KitListTest, AProductIsTakenAlongOnceHoweverOftenItIsUsed) {
    needs(10);
    tick("mousse");
    Look second;
    second.client = mira;
    second.wedding = wedding;
    second.name = "evening";
    Recipe recipe;
    recipe.prep = {{"Mousse", "one walnut", "ends"}};
    library.recipes().save(library.looks().add(second), recipe, at("2026-11-07T12:00"));
    EXPECT_EQ(counted_text(line("mousse")), "Mousse");
    EXPECT_EQ(line("mousse").about, "two walnuts; one walnut");
    EXPECT_EQ(grown_text(line("mousse")), "Used 1 time more than when it was ticked.");
}

TEST_F(KitListTest, ATickOfAnotherWeddingIsAnotherTick) {
    needs(10);
    Wedding other;
    other.name = "Other";
    other.date = parse_date("2027-01-01").value();
    library.kit_ticks().set(library.weddings().add(other), line("grip").item, 12);
    EXPECT_FALSE(line("grip").ticked);
}

TEST_F(KitListTest, LinesAreCalledByWordsOrNumber) {
    needs(10, "2 in 1 mousse");
    EXPECT_EQ(line("GRIP, BROWN").what, "grip, brown");
    EXPECT_EQ(line("#2").what, "grip, brown");
    EXPECT_EQ(line("2").what, "grip, brown");
    EXPECT_EQ(line("2 in").what, "2 in 1 mousse");
    EXPECT_TRUE(lines_called(list(), "tongs").empty());
    EXPECT_TRUE(lines_called(list(), "#0").empty());
    EXPECT_EQ(lines_called(list(), "r").size(), 1U);
    EXPECT_EQ(lines_called(list(), "o").size(), 2U);
}

TEST_F(KitListTest, SaysHowManyAndOfWhatNoneAreCounted) {
    Recipe recipe;
    recipe.build = {{"pin", 5, {{"grip", "black", std::nullopt, false}}}};
    Piece comb;
    comb.kind = PieceKind::accessory;
    comb.what = "leaf comb";
    comb.brought_by = "the bride";
    recipe.pieces = {comb};
    library.recipes().save(look, recipe, at("2026-11-07T12:00"));
    EXPECT_EQ(counted_text(line("grip")), "grip, black");
    EXPECT_EQ(line("grip").about, "some that no recipe counts");
    EXPECT_EQ(counted_text(line("comb")), "accessory: leaf comb");
    EXPECT_EQ(line("comb").about, "brought by the bride");
}

TEST_F(KitListTest, LooksWithoutARecipeAreSaid) {
    EXPECT_EQ(kit_notes(list()), std::vector<std::string>{"low twisted bun has no recipe yet, so "
                                                          "nothing of it is in the list."});
    Wedding other;
    other.name = "Other";
    other.date = parse_date("2027-01-01").value();
    EXPECT_EQ(kit_notes(kit_list(library, library.weddings().add(other))),
              std::vector<std::string>{
                  "No look is planned for this wedding yet, so there is nothing to pack."});
}

TEST_F(KitListTest, TheNextWeddingComesFirst) {
    const auto add = [this](const char* name, const char* date) {
        Wedding added;
        added.name = name;
        added.date = parse_date(date).value();
        library.weddings().add(added);
    };
    add("later", "2027-05-01");
    add("long ago", "2025-05-01");
    add("past", "2026-11-20");
    std::string order;
    for (const Wedding& each : next_wedding_first(library, parse_date("2026-11-21").value())) {
        order += each.name + "; ";
    }
    EXPECT_EQ(order, "Okonjo-Lindqvist and Vale; later; past; long ago; ");
}

}  // namespace
}  // namespace quarterturn
