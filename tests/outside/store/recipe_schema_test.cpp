// recipe.schema.json against the recipes that the program writes: JSON Schema 2020-12, judged by
// python3-jsonschema.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>

#include "indexer/store/recipe_table.h"
#include "tests/support/arbitrary_recipe.h"
#include "tests/support/command.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

constexpr const char* judge = R"(
import json, sys
from jsonschema import Draft202012Validator
schema = json.load(open(sys.argv[1]))
Draft202012Validator.check_schema(schema)
validator = Draft202012Validator(schema)
for number, line in enumerate(open(sys.argv[2], encoding="utf-8"), 1):
    wrong = next(validator.iter_errors(json.loads(line)), None)
    print(number, "right" if wrong is None else "wrong: " + wrong.message[:200])
)";

class RecipeSchema : public testing::Test {
  protected:
    // A line for each recipe, one a line of `recipes`.
    std::string judged(const std::string& recipes) {
        std::ofstream(folder / "judge.py") << judge;
        std::ofstream(folder / "recipes") << recipes;
        return output_of("python3 " + shell_word(folder / "judge.py") + " " +
                         shell_word(QUARTERTURN_SOURCE "/indexer/store/recipe.schema.json") + " " +
                         shell_word(folder / "recipes") + " 2>&1");
    }

    TemporaryFolder folder;
};

TEST_F(RecipeSchema, HoldsForWhateverTheProgramWrites) {
    std::string recipes = recipe_json({}) + "\n";
    std::string expected = "1 right\n";
    int number = 1;
    const bool made = rc::check([&] {
        if (++number > 60) return;
        recipes += recipe_json(arbitrary_recipe()) + "\n";
        expected += std::to_string(number) + " right\n";
    });
    EXPECT_TRUE(made);
    EXPECT_EQ(judged(recipes), expected);
}

// The program refuses each of these too.
TEST_F(RecipeSchema, RefusesWhatTheProgramRefuses) {
    const std::vector<std::string> wrong{
        R"({"partng": "none"})",
        R"({"parting": 3})",
        R"({"hands_on_minutes": 5.5})",
        R"({"build": {}})",
        R"({"build": [{"pins": [{"crossed": 1}]}]})",
        R"({"parting_line": {"side": "north"}})",
        R"({"feedback_details": {"yes_on": "soon"}})",
        R"({"head_plan": {"marks": [{"at": {"x": "left"}}]}})",
        R"({"pieces": [{"kind": "ribbon"}]})",
        R"({"second_look": {"steps": "open"}})",
    };
    std::string recipes;
    for (const std::string& recipe : wrong) {
        recipes += recipe + "\n";
        EXPECT_THROW(parse_recipe_json(recipe), StoreError) << recipe;
    }
    const std::string said = judged(recipes);
    EXPECT_EQ(said.find("right"), std::string::npos) << said;
    EXPECT_NE(said.find(std::to_string(wrong.size()) + " wrong"), std::string::npos) << said;
}

// Every field that the program knows stands in the schema, and none besides.
TEST_F(RecipeSchema, NamesTheProgramsFields) {
    std::ifstream file(QUARTERTURN_SOURCE "/indexer/store/recipe.schema.json");
    const auto schema = nlohmann::json::parse(file);
    std::vector<std::string> fields = recipe_field_names();
    std::sort(fields.begin(), fields.end());
    std::vector<std::string> named;
    for (const auto& [name, field] : schema.at("properties").items()) named.push_back(name);
    EXPECT_EQ(named, fields);
}

}  // namespace
}  // namespace quarterturn
