#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <nlohmann/json.hpp>

#include "indexer/store/recipe_table.h"
#include "tests/support/arbitrary_text.h"

namespace quarterturn {
namespace {

using Json = nlohmann::json;

rc::Gen<std::optional<int>> maybe_number() {
    return rc::gen::oneOf(
        rc::gen::just(std::optional<int>{}),
        rc::gen::map(rc::gen::arbitrary<int>(), [](int number) { return std::optional{number}; }));
}

rc::Gen<std::optional<double>> maybe_width() {
    // RapidCheck's arbitrary doubles are finite.
    return rc::gen::oneOf(rc::gen::just(std::optional<double>{}),
                          rc::gen::map(rc::gen::arbitrary<double>(),
                                       [](double number) { return std::optional{number}; }));
}

Product any_product() {
    return {*arbitrary_text(), *arbitrary_text(), *arbitrary_text()};
}

Pins any_pins() {
    return {*arbitrary_text(), *arbitrary_text(), *maybe_number(), *rc::gen::arbitrary<bool>()};
}

template <class Make>
auto some(int most, Make make) {
    std::vector<decltype(make())> result;
    for (int left = *rc::gen::inRange(0, most + 1); left > 0; --left) result.push_back(make());
    return result;
}

Step any_step() {
    return {*arbitrary_text(), *maybe_number(), some(2, any_pins)};
}

Recipe any_recipe() {
    Recipe recipe;
    for (std::string* text :
         {&recipe.hair, &recipe.cautions, &recipe.heat_protection, &recipe.sections,
          &recipe.parting, &recipe.accessory, &recipe.finish, &recipe.feedback}) {
        *text = *arbitrary_text();
    }
    recipe.prep = some(3, any_product);
    recipe.build = some(3, any_step);
    if (*rc::gen::arbitrary<bool>()) {
        recipe.heat_tool = HeatTool{*arbitrary_text(), *maybe_width(), *maybe_number()};
    }
    recipe.hands_on_minutes = *maybe_number();
    recipe.waiting_minutes = *maybe_number();
    return recipe;
}

RC_GTEST_PROP(RecipeJson, ComesBackAsItWas, ()) {
    const Recipe recipe = any_recipe();
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
    const std::string json = recipe_json(any_recipe());
    RC_ASSERT(recipe_json(parse_recipe_json(dressed_up(Json::parse(json)))) == json);
}

// The only way out is a recipe or a sentence.
RC_GTEST_PROP(RecipeJson, SurvivesDamage, ()) {
    std::string json = recipe_json(any_recipe());
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
