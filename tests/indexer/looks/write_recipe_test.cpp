#include "indexer/looks/write_recipe.h"

#include "indexer/looks/look_standing.h"
#include "indexer/looks/own_words.h"
#include "tests/indexer/looks/whole_look.h"

namespace quarterturn {
namespace {

TEST(WriteRecipe, ARevisionKnowsItsSitting) {
    ExampleLibrary example;
    Sitting day;
    day.client = example.mira;
    day.wedding = example.wedding;
    day.kind = SittingKind::wedding_day;
    day.starts = at("2026-11-21T08:00");
    day.ends = at("2026-11-21T11:00");
    const SittingId wedding_day = example.library.sittings().add(day);
    Look look = *example.library.looks().find(example.look);
    look.sittings.push_back(wedding_day);
    example.library.looks().change(look);
    const auto written = [&](const char* time) {
        return sitting_at(example.library, look, at(time));
    };
    EXPECT_EQ(written("2026-11-07T11:30"), example.trial);
    EXPECT_EQ(written("2026-11-07T21:00"), example.trial);  // at home, the same evening
    EXPECT_EQ(written("2026-11-21T08:00"), wedding_day);
    EXPECT_EQ(written("2026-11-10T10:00"), std::nullopt);
    save_recipe(example.library, look, whole_recipe(), at("2026-11-21T09:00"));
    EXPECT_EQ(example.library.recipes().current(look.id)->sitting, wedding_day);
}

TEST(WriteRecipe, AStartFromAnotherLookTakesOverHowItIsMade) {
    WholeLook whole;
    Recipe first = whole_recipe();
    first.build[0].photos = {std::string(64, 'a')};
    first.second_look = SecondLook{};
    whole.library.recipes().save(whole.look, first, whole.noon);
    const Look source = *whole.library.looks().find(whole.look);
    Look own = source;
    const Recipe same = *start_from_look(whole.library, own, source);
    EXPECT_EQ(same.hair, first.hair);
    EXPECT_EQ(same.cautions, first.cautions);
    EXPECT_EQ(same.build[0].words, first.build[0].words);
    EXPECT_TRUE(same.build[0].photos.empty());
    EXPECT_TRUE(same.feedback.empty());
    EXPECT_EQ(same.feedback_details, FeedbackDetails{});
    EXPECT_FALSE(same.second_look);
    Look others = source;
    others.client = whole.library.clients().add(client_called("Another"));
    const Recipe another = *start_from_look(whole.library, others, source);
    EXPECT_TRUE(another.hair.empty());
    EXPECT_TRUE(another.cautions.empty());
    EXPECT_EQ(another.prep, first.prep);
    Look empty = source;
    empty.id = LookId{99};
    EXPECT_FALSE(start_from_look(whole.library, own, empty));
}

TEST(SignOffWithADraft, SavesItAndSignsWhatItSays) {
    WholeLook whole;
    Recipe draft = whole_recipe();
    draft.finish = "light spray";
    whole.library.recipes().keep_draft(whole.look, draft, whole.noon);
    EXPECT_TRUE(whole.sign().empty());
    EXPECT_EQ(whole.library.recipes().current(whole.look)->recipe, draft);
    EXPECT_FALSE(whole.library.recipes().draft(whole.look));
    EXPECT_TRUE(whole.state().changes_since.empty());
}

TEST(SignOffWithADraft, ADraftThatIsNotFitStaysADraft) {
    WholeLook whole;
    Recipe draft = whole_recipe();
    draft.parting.clear();
    whole.library.recipes().keep_draft(whole.look, draft, whole.noon);
    ASSERT_EQ(whole.state().recipe_findings.size(), 1U);
    EXPECT_EQ(whole.state().recipe_findings[0].rule, "parting");
    const Look look = *whole.library.looks().find(whole.look);
    EXPECT_EQ(look_standings(whole.library, {look})[look.id].next, NextStep::write_recipe);
    EXPECT_EQ(whole.sign().size(), 1U);
    EXPECT_EQ(whole.library.recipes().current(whole.look)->recipe, whole_recipe());
    EXPECT_EQ(whole.library.recipes().draft(whole.look)->recipe, draft);
}

class OwnWordsTest : public testing::Test, public ExampleLibrary {
  protected:
    void save(const char* name, const Recipe& recipe) {
        Look another;
        another.client = mira;
        another.name = name;
        library.recipes().save(library.looks().add(another), recipe, at("2026-11-07T12:00"));
    }
    using Texts = std::vector<std::string>;
};

TEST_F(OwnWordsTest, TheMostUsedComesFirst) {
    Recipe one;
    one.prep = {{"smoothing cream", "a pea", "ends"}, {"Setting lotion", "", ""}};
    save("one", one);
    Recipe two;
    two.prep = {{"setting lotion", "two walnuts", "roots"}, {"salt spray", "", ""}};
    save("two", two);
    Recipe three;
    three.build = {{"", {}, {}}};
    three.build[0].products = {{"soft wax", "", ""}};
    library.recipe_templates().save("three", three);
    const OwnWords words(library);
    EXPECT_EQ(words.beginning(WordsFor::product, "S"),
              (Texts{"setting lotion", "salt spray", "smoothing cream", "soft wax"}));
    EXPECT_EQ(words.beginning(WordsFor::product, "cr"), (Texts{"smoothing cream"}));
    EXPECT_EQ(words.beginning(WordsFor::product, "s", 1), (Texts{"setting lotion"}));
    EXPECT_TRUE(words.beginning(WordsFor::product, "mousse").empty());
    EXPECT_TRUE(words.beginning(WordsFor::tool, "").empty());
    EXPECT_EQ(words.beginning(WordsFor::amount, "").size(), 2U);
}

TEST_F(OwnWordsTest, KnowAnyScriptAndOnlyTheNewestRevision) {
    Recipe old;
    old.build = {{"Twist", {}, {{"grip", "brown", 2, true}}}};
    library.recipes().save(look, old, at("2026-11-07T11:00"));
    Recipe recipe;
    recipe.build = {{"ΣΤΡΊΨΕ τα μαλλιά", {}, {{"fine hair pin", "bronze", 2, true}}}};
    recipe.heat_tool = HeatTool{"tongs", 25, 170};
    library.recipes().save(look, recipe, at("2026-11-07T12:00"));
    const OwnWords words(library);
    EXPECT_EQ(words.beginning(WordsFor::step, "στρί"), (Texts{"ΣΤΡΊΨΕ τα μαλλιά"}));
    EXPECT_EQ(words.beginning(WordsFor::pins, "hair"), (Texts{"fine hair pin"}));
    EXPECT_EQ(words.beginning(WordsFor::tool, "t"), (Texts{"tongs"}));
    EXPECT_TRUE(words.beginning(WordsFor::step, "twist").empty());
}

}  // namespace
}  // namespace quarterturn
