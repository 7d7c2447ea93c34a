#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <nlohmann/json.hpp>

#include "indexer/store/recipe_table.h"
#include "tests/support/arbitrary_recipe.h"

namespace quarterturn {
namespace {

using Json = nlohmann::json;

RC_GTEST_PROP(RecipeJson, ComesBackAsItWas, ()) {
    const Recipe recipe = arbitrary_recipe();
    const std::string json = recipe_json(recipe);
    RC_ASSERT(parse_recipe_json(json) == recipe);
    RC_ASSERT(recipe_json(parse_recipe_json(json)) == json);
}

// The same words in another dress: keys in another order, with white space, all signs escaped.
std::string dressed_up(const Json& json) {
    if (json.is_array()) {
        std::string text = "[ ";
        for (const Json& entry : json) text += (text.size() > 2 ? " ,\n" : "") + dressed_up(entry);
        return text + "\t]";
    }
    if (!json.is_object()) return json.dump(-1, ' ', true);
    std::vector<std::string> members;
    for (const auto& [name, value] : json.items()) {
        members.push_back(Json(name).dump() + " : " + dressed_up(value));
    }
    std::string text = "{\n";
    for (auto member = members.rbegin(); member != members.rend(); ++member) {
        text += (member == members.rbegin() ? "" : " , ") + *member;
    }
    return text + " }";
}

RC_GTEST_PROP(RecipeJson, IsTheSameTextHoweverItWasWritten, ()) {
    const std::string json = recipe_json(arbitrary_recipe());
    RC_ASSERT(recipe_json(parse_recipe_json(dressed_up(Json::parse(json)))) == json);
}

// What a program without the later fields would write of it: their names and values are all that a
// recipe that says nothing of them lacks.
RC_GTEST_PROP(RecipeJson, ARecipeOfTheFirstFieldsAloneNamesNoOthers, ()) {
    Recipe recipe;
    recipe.hair = *arbitrary_text();
    recipe.feedback = *arbitrary_text();
    recipe.build = {{*arbitrary_text(), *rc::gen::arbitrary<int>(), {}}};
    recipe.heat_tool = HeatTool{*arbitrary_text(), *rc::gen::arbitrary<double>(), std::nullopt};
    const Json first{{"hair", recipe.hair},
                     {"cautions", ""},
                     {"prep", Json::array()},
                     {"heat_protection", ""},
                     {"heat_tool",
                      {{"kind", recipe.heat_tool->kind},
                       {"barrel_mm", *recipe.heat_tool->barrel_mm},
                       {"temperature_c", nullptr}}},
                     {"sections", ""},
                     {"parting", ""},
                     {"build", Json::array({Json{{"words", recipe.build[0].words},
                                                 {"minutes", *recipe.build[0].minutes},
                                                 {"pins", Json::array()}}})},
                     {"accessory", ""},
                     {"finish", ""},
                     {"feedback", recipe.feedback},
                     {"hands_on_minutes", nullptr},
                     {"waiting_minutes", nullptr}};
    RC_ASSERT(recipe_json(recipe) == first.dump());
}

// The only way out is a recipe or a sentence.
RC_GTEST_PROP(RecipeJson, SurvivesDamage, ()) {
    std::string json = recipe_json(arbitrary_recipe());
    for (int count = *rc::gen::inRange(1, 5); count > 0; --count) {
        json[*rc::gen::inRange<std::size_t>(0, json.size())] = *rc::gen::arbitrary<char>();
    }
    try {
        parse_recipe_json(json);
    } catch (const StoreError& error) {
        RC_ASSERT(std::string(error.what()).find("ecipe") != std::string::npos);
    }
}

}  // namespace
}  // namespace quarterturn
