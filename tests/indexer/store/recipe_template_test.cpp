#include <gtest/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

Recipe parted(const char* parting) {
    Recipe recipe;
    recipe.parting = parting;
    return recipe;
}

class RecipeTemplates : public testing::Test, public ExampleLibrary {};

TEST_F(RecipeTemplates, AreKeptByNameAndReplaced) {
    library.recipe_templates().save("Tiefer Dutt", parted("left"));
    library.recipe_templates().save("Äußerst schlicht", parted("none"));
    library.recipe_templates().save("TIEFER DUTT", parted("right"));
    reopen();
    const auto all = library.recipe_templates().all();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].name, "Äußerst schlicht");
    EXPECT_EQ(all[1], (RecipeTemplate{"TIEFER DUTT", parted("right")}));
    EXPECT_EQ(library.recipe_templates().find("äusserst schlicht")->recipe, parted("none"));
    library.recipe_templates().remove("tiefer dutt");
    EXPECT_FALSE(library.recipe_templates().find("Tiefer Dutt"));
    EXPECT_THROW(library.recipe_templates().remove("Tiefer Dutt"), StoreError);
    EXPECT_THROW(library.recipe_templates().save("  ", parted("left")), StoreError);
}

class RecipeDrafts : public testing::Test, public ExampleLibrary {};

TEST_F(RecipeDrafts, AreNoRevisionUntilTheyAreSaved) {
    library.recipes().save(look, parted("left"), at("2026-11-07T12:00"));
    library.recipes().keep_draft(look, parted("lef"), at("2026-11-07T12:01"));
    library.recipes().keep_draft(look, parted("right"), at("2026-11-07T12:02"));
    reopen();
    EXPECT_EQ(library.recipes().revisions(look).size(), 1U);
    EXPECT_EQ(library.recipes().draft(look)->recipe, parted("right"));
    EXPECT_EQ(library.recipes().draft(look)->kept_at, at("2026-11-07T12:02"));
    library.recipes().save(look, parted("right"), at("2026-11-07T12:03"), trial);
    EXPECT_FALSE(library.recipes().draft(look));
    EXPECT_EQ(library.recipes().current(look)->sitting, trial);
    EXPECT_FALSE(library.recipes().revisions(look)[0].sitting);
}

TEST_F(RecipeDrafts, OneThatSaysNothingNewIsNone) {
    library.recipes().save(look, parted("left"), at("2026-11-07T12:00"));
    library.recipes().keep_draft(look, parted("right"), at("2026-11-07T12:01"));
    library.recipes().keep_draft(look, parted("left"), at("2026-11-07T12:02"));
    EXPECT_FALSE(library.recipes().draft(look));
    library.recipes().keep_draft(look, parted("right"), at("2026-11-07T12:03"));
    library.recipes().drop_draft(look);
    EXPECT_FALSE(library.recipes().draft(look));
    EXPECT_EQ(library.recipes().current(look)->recipe, parted("left"));
}

}  // namespace
}  // namespace quarterturn
