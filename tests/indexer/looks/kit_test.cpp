#include "indexer/looks/kit.h"

#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

using Texts = std::vector<std::string>;

class KitTest : public testing::Test, public ExampleLibrary {
  protected:
    void save(const char* name, const Recipe& recipe) {
        Look another;
        another.client = mira;
        another.wedding = wedding;
        another.name = name;
        library.recipes().save(library.looks().add(another), recipe, at("2026-11-07T12:00"));
    }
    static Recipe with_pins(std::vector<Pins> pins) {
        Recipe recipe;
        recipe.build = {{"pin", 5, std::move(pins)}};
        return recipe;
    }
};

TEST_F(KitTest, PinsAreAddedUpByKindAndColourWithASpareMargin) {
    save("one", with_pins({{"grip", "dark brown", 4, true}, {"hair pin", "bronze", 5, false}}));
    save("two", with_pins({{"Grip", "Dark brown", 7, false}, {"grip", "black", 1, false}}));
    Kit kit = kit_of(library, wedding);
    ASSERT_EQ(kit.pins.size(), 3U);
    EXPECT_EQ(kit.pins[1].needed, 11);
    EXPECT_EQ(kit.pins[1].with_spare, 14);  // 20 % of 11 are 2.2: three more
    EXPECT_EQ(kit.pins[1].looks, (Texts{"one", "two"}));
    EXPECT_EQ(kit.pins[0].with_spare, 2);
    set_spare_percent(library, 100);
    EXPECT_EQ(kit_of(library, wedding).pins[1].with_spare, 22);
    set_spare_percent(library, 0);
    EXPECT_EQ(kit_of(library, wedding).pins[1].with_spare, 11);
    EXPECT_THROW(set_spare_percent(library, -1), StoreError);
}

TEST_F(KitTest, SaysWhatItCannotCount) {
    save("one", with_pins({{"grip", "black", std::nullopt, false}, {"grip", "black", 3, false}}));
    const Kit kit = kit_of(library, wedding);
    EXPECT_EQ(kit.pins.at(0).needed, 3);
    EXPECT_TRUE(kit.pins.at(0).uncounted);
    EXPECT_EQ(kit.without_recipe, (Texts{"low twisted bun"}));
    EXPECT_THROW(kit_of(library, WeddingId{99}), StoreError);
}

TEST_F(KitTest, ListsProductsToolsAndWhoBringsTheAccessory) {
    Recipe recipe;
    recipe.prep = {{"mousse", "two walnuts", "roots"}, {"none", "", ""}};
    recipe.heat_tool = HeatTool{"tongs", 25, 170};
    recipe.build = {{"curl", 5, {}}};
    recipe.build[0].products = {{"Mousse", "one walnut", "ends"}};
    recipe.build[0].heat_tool = HeatTool{"tongs", 19, 170};
    Piece comb;
    comb.what = "leaf comb";
    comb.brought_by = "the bride";
    recipe.pieces = {comb, comb};
    save("one", recipe);
    const Kit kit = kit_of(library, wedding);
    ASSERT_EQ(kit.products.size(), 1U);
    EXPECT_EQ(kit.products[0].amounts, (Texts{"two walnuts", "one walnut"}));
    EXPECT_EQ(kit.tools.size(), 2U);
    ASSERT_EQ(kit.pieces.size(), 1U);
    EXPECT_EQ(kit.pieces[0].count, 2);
    EXPECT_EQ(kit.pieces[0].brought_by, "the bride");
}

TEST_F(KitTest, ForgetsNeitherFinishNorHeatProtectionNorAnAccessoryToldInWords) {
    Recipe recipe;
    recipe.heat_protection = "mist on every section";
    recipe.finish_details.spray = Hold::regular;
    recipe.finish_details.smoothing = "none";
    recipe.accessory = "pearl comb above the left ear";
    save("one", recipe);
    recipe.accessory = "None";
    save("two", recipe);
    const Kit kit = kit_of(library, wedding);
    ASSERT_EQ(kit.products.size(), 2U);
    EXPECT_EQ(kit.products[0].name, "heat protection");
    EXPECT_EQ(kit.products[0].uses, 2);
    EXPECT_EQ(kit.products[1].name, "spray, regular hold");
    ASSERT_EQ(kit.pieces.size(), 1U);
    EXPECT_EQ(kit.pieces[0].what, "pearl comb above the left ear");
}

TEST_F(KitTest, AnAccessoryWithItsOwnFieldsIsNotListedTwice) {
    Recipe recipe;
    recipe.accessory = "the comb, leaves pointing up";
    Piece comb;
    comb.what = "leaf comb";
    recipe.pieces = {comb};
    save("one", recipe);
    EXPECT_EQ(kit_of(library, wedding).pieces.size(), 1U);
}

TEST_F(KitTest, AnotherWeddingsLooksStayAtHome) {
    save("one", with_pins({{"grip", "black", 3, false}}));
    Wedding other;
    other.name = "Other";
    other.date = parse_date("2027-01-01").value();
    EXPECT_TRUE(kit_of(library, library.weddings().add(other)).pins.empty());
}

}  // namespace
}  // namespace quarterturn
