#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

Recipe bun() {
    Recipe recipe;
    recipe.hair = "washed the evening before, to the waist, fine but much of it";
    recipe.cautions = "tender behind the left ear";
    recipe.prep = {{"light mousse", "two walnuts", "roots"}};
    recipe.heat_protection = "spray, as its label says";
    recipe.heat_tool = HeatTool{"tongs", 25, 160};
    recipe.parting = "side, on her left";
    recipe.build = {{"twist from the left ear to the nape", 12, {{"grip", "brown", 6, true}}},
                    {"fold the lengths under — 髪 \"low\"", std::nullopt, {}}};
    recipe.accessory = "comb with glass leaves, above the left ear";
    recipe.hands_on_minutes = 55;
    return recipe;
}

// A change of this text breaks the seal of every look that was signed off.
TEST(RecipeJson, IsCanonical) {
    EXPECT_EQ(
        recipe_json(bun()),
        R"json({"accessory":"comb with glass leaves, above the left ear",)json"
        R"json("build":[{"minutes":12,"pins":[{"colour":"brown","count":6,"crossed":true,"kind":"grip"}],)json"
        R"json("words":"twist from the left ear to the nape"},)json"
        R"json({"minutes":null,"pins":[],"words":"fold the lengths under — 髪 \"low\""}],)json"
        R"json("cautions":"tender behind the left ear","feedback":"","finish":"",)json"
        R"json("hair":"washed the evening before, to the waist, fine but much of it",)json"
        R"json("hands_on_minutes":55,"heat_protection":"spray, as its label says",)json"
        R"json("heat_tool":{"barrel_mm":25.0,"kind":"tongs","temperature_c":160},"parting":"side, on her left",)json"
        R"json("prep":[{"amount":"two walnuts","name":"light mousse","where":"roots"}],)json"
        R"json("sections":"","waiting_minutes":null})json");
}

// As the first version wrote it; its SHA-256 by sha256sum.
TEST(RecipeJson, AnOldRecipeKeepsItsSeal) {
    const std::string old =
        R"json({"accessory":"","build":[{"minutes":12,"pins":[{"colour":"brown","count":6,)json"
        R"json("crossed":true,"kind":"grip"}],"words":"twist to the nape"}],"cautions":"",)json"
        R"json("feedback":"","finish":"","hair":"","hands_on_minutes":null,"heat_protection":"",)json"
        R"json("heat_tool":null,"parting":"side, on her left","prep":[],"sections":"",)json"
        R"json("waiting_minutes":null})json";
    EXPECT_EQ(recipe_json(parse_recipe_json(old)), old);
    EXPECT_EQ(sha256(recipe_json(parse_recipe_json(old))),
              "2f9c2524d09f5073e1fb36dd12f235bd80956387fe17205cbe8ba5b5bca1274a");
}

TEST(RecipeJson, TellsTheDeeperFieldsInPlainWords) {
    Recipe recipe;
    recipe.hair_on_the_day.length = "to the waist";
    recipe.caution_details.sensitivities = {
        {"setting lotion", parse_date("2026-05-02"), "nothing came of it"}};
    recipe.winding = {20, Wind::away, ""};
    recipe.parting_line = {PartingSide::left, 4};
    recipe.head_plan.strokes = {{StrokeKind::parting, {{-0.3, -1}, {-0.25, 0}}}};
    recipe.pieces = {{.kind = PieceKind::padding,
                      .what = "crescent",
                      .colour = "light",
                      .count = {},
                      .brought_by = "stylist",
                      .where = {},
                      .at = {},
                      .photo = {}}};
    recipe.finish_details.spray = Hold::regular;
    recipe.feedback_details.seen_in = SeenIn::mirror_and_photos;
    const std::string json = recipe_json(recipe);
    for (const char* part :
         {R"("hair_on_the_day":{"length":"to the waist"})", R"("patch_tested":"2026-05-02")",
          R"("winding":{"direction":"away from the face","section_mm":20.0})",
          R"("parting_line":{"from_centre_cm":4.0,"side":"left"})",
          R"("strokes":[{"kind":"parting","points":[{"x":-0.3,"y":-1.0},{"x":-0.25,"y":0.0}]}])",
          R"("pieces":[{"brought_by":"stylist","colour":"light","kind":"padding",)",
          R"("finish_details":{"spray":"regular"})", R"("seen_in":"mirror and photos")"}) {
        EXPECT_NE(json.find(part), std::string::npos) << part << "\n" << json;
    }
}

TEST(RecipeJson, TakesWhatSheWroteAndLeavesTheRestEmpty) {
    Recipe recipe;
    recipe.parting = "none";
    recipe.heat_tool = HeatTool{"tongs", 25.0, std::nullopt};
    EXPECT_EQ(parse_recipe_json(
                  R"({ "parting": "none", "heat_tool": {"kind": "tongs", "barrel_mm": 25} })"),
              recipe);
    EXPECT_EQ(parse_recipe_json("{}"), Recipe{});
}

TEST(RecipeJson, NamesWhatIsWrong) {
    const auto refusal = [](const char* json) -> std::string {
        try {
            parse_recipe_json(json);
            return "not refused";
        } catch (const StoreError& error) {
            return error.what();
        }
    };
    const auto says = [&](const char* json, const char* part) {
        const std::string sentence = refusal(json);
        EXPECT_NE(sentence.find(part), std::string::npos) << sentence;
    };
    says(R"({"partng": "none"})", "\"partng\" is no field of a recipe");
    says(R"({"parting": 3})", "\"parting\" must be a text");
    says(R"({"hands_on_minutes": 5.5})", "\"hands_on_minutes\" must be a whole number");
    says(R"({"hands_on_minutes": 5000000000})", "\"hands_on_minutes\" must be a whole number");
    says(R"({"hands_on_minutes": 18446744073709551615})", "must be a whole number");
    says(R"({"build": {}})", "\"build\" must be a list");
    says(R"({"build": [{}, {"pins": [{"count": "six"}]}]})", "\"build 2, pins 1, count\" must be");
    says(R"({"build": [{"pins": [{"crossed": 1}]}]})", "\"build 1, pins 1, crossed\" must be true");
    says(R"({"build": ["twist"]})", "\"build 1\" must be an object");
    says(R"({"heat_tool": {"heat": 1}})", "\"heat_tool, heat\" is no field");
    says(R"({"heat_tool": {"barrel_mm": "wide"}})", "\"heat_tool, barrel_mm\" must be a number");
    says(R"({"parting_line": {"side": "north"}})",
         "\"parting_line, side\" must be \"left\", \"middle\", \"right\" or \"none\"");
    says(R"({"feedback_details": {"yes_on": "2026-02-30"}})",
         "\"feedback_details, yes_on\" must be a date");
    says(R"({"head_plan": {"marks": [{"at": {"x": "left"}}]}})",
         "\"head_plan, marks 1, at, x\" must be a number");
    says(R"([])", "must be an object");
    says(R"({"parting": "none")", "no valid JSON");
    says("{\"parting\": \"\xff\"}", "no valid JSON");
    says(R"({"parting": "a\u0000b"})", "\"parting\" in the recipe");
    says("", "no valid JSON");
}

TEST(RecipeJson, RefusesWhatNoJsonCanHold) {
    Recipe recipe;
    recipe.hair = "\xff";
    EXPECT_THROW(recipe_json(recipe), StoreError);
    recipe.hair.clear();
    recipe.heat_tool = HeatTool{"tongs", std::numeric_limits<double>::infinity(), std::nullopt};
    EXPECT_THROW(recipe_json(recipe), StoreError);
    recipe.heat_tool.reset();
    recipe.feedback_details.yes_on = Date{};
    EXPECT_THROW(recipe_json(recipe), StoreError);
}

class RecipeTableTest : public testing::Test, public ExampleLibrary {};

TEST_F(RecipeTableTest, KeepsEachSavedChange) {
    RecipeTable recipes = library.recipes();
    EXPECT_FALSE(recipes.current(look));
    const RevisionId first = recipes.save(look, bun(), at("2026-11-07T12:00"));
    EXPECT_EQ(recipes.save(look, bun(), at("2026-11-07T12:05")), first);
    Recipe changed = bun();
    changed.build.pop_back();
    const RevisionId second = recipes.save(look, changed, at("2026-11-07T12:10:30"));
    EXPECT_NE(second, first);
    const RevisionId third = recipes.save(look, bun(), at("2026-11-07T12:20"));
    reopen();
    const auto revisions = library.recipes().revisions(look);
    ASSERT_EQ(revisions.size(), 3U);
    EXPECT_EQ(revisions[0].recipe, bun());
    EXPECT_EQ(revisions[1].id, second);
    EXPECT_EQ(revisions[1].number, 2);
    EXPECT_EQ(revisions[1].recipe, changed);
    EXPECT_EQ(revisions[1].saved_at, at("2026-11-07T12:10:30"));
    EXPECT_EQ(library.recipes().current(look)->id, third);
    EXPECT_EQ(library.recipes().current(look)->number, 3);
}

TEST_F(RecipeTableTest, ASavingTakenBackIsADraftAgain) {
    RecipeTable recipes = library.recipes();
    const RevisionId first = recipes.save(look, bun(), at("2026-11-07T12:00"));
    Recipe changed = bun();
    changed.finish = "mist";
    recipes.keep_draft(look, changed, at("2026-11-07T12:10"));
    const auto save = [&] { recipes.save(look, changed, at("2026-11-07T12:20")); };
    library.history().record("saved it", save);
    EXPECT_EQ(library.history().undo(), "saved it");
    EXPECT_EQ(recipes.current(look)->id, first);
    EXPECT_EQ(recipes.draft(look)->recipe, changed);
    EXPECT_EQ(recipes.draft(look)->kept_at, at("2026-11-07T12:10"));
    Recipe later = changed;
    later.drying = "by air";
    library.history().record("saved it", save);
    recipes.keep_draft(look, later, at("2026-11-07T12:30"));
    library.history().undo();
    EXPECT_EQ(recipes.draft(look)->recipe, later) << "what she wrote since stays";
}

TEST_F(RecipeTableTest, ASavingIsNotTakenBackFromUnderALaterOne) {
    RecipeTable recipes = library.recipes();
    library.history().record("saved it",
                             [&] { recipes.save(look, bun(), at("2026-11-07T12:00")); });
    Recipe changed = bun();
    changed.finish = "mist";
    recipes.save(look, changed, at("2026-11-07T12:10"));
    EXPECT_THROW(library.history().undo(), StoreError);
    EXPECT_EQ(recipes.revisions(look).size(), 2U);
}

TEST_F(RecipeTableTest, ASealedRevisionIsNotTakenBack) {
    RevisionId saved;
    library.history().record(
        "saved it", [&] { saved = library.recipes().save(look, bun(), at("2026-11-07T12:00")); });
    SignOff sign_off;
    sign_off.look = look;
    sign_off.signed_at = at("2026-11-07T12:10");
    sign_off.seal.recipe_sha256 = sha256(recipe_json(bun()));
    library.sign_offs().add(sign_off);
    EXPECT_THROW(library.history().undo(), StoreError);
    EXPECT_EQ(library.recipes().current(look)->id, saved);
    library.sign_offs().reopen(look, "another pin", at("2026-11-07T12:20"));
    EXPECT_EQ(library.history().undo(), "saved it");
    EXPECT_FALSE(library.recipes().current(look));
}

TEST_F(RecipeTableTest, BelongsToALookThatIsThere) {
    EXPECT_THROW(library.recipes().save(LookId{77}, bun(), at("2026-11-07T12:00")), StoreError);
}

}  // namespace
}  // namespace quarterturn
