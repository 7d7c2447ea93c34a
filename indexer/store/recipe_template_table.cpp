#include "indexer/store/recipe_template_table.h"

#include "indexer/store/recipe_table.h"
#include "indexer/store/statement.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

RecipeTemplate template_in(const Statement& row) {
    RecipeTemplate found;
    std::string json;
    row.read(found.name, json);
    found.recipe = parse_recipe_json(json);
    return found;
}

}  // namespace

void RecipeTemplateTable::save(std::string_view name, const Recipe& recipe) {
    refuse_unless_name("the template's name", name);
    run(*database_,
        "INSERT INTO recipe_template (name, folded_name, recipe) VALUES (?, ?, ?) "
        "ON CONFLICT (folded_name) DO UPDATE SET name = excluded.name, recipe = excluded.recipe",
        name, folded(name), recipe_json(recipe));
}

void RecipeTemplateTable::remove(std::string_view name) {
    update_one(*database_, "template '" + std::string(name) + "'",
               "DELETE FROM recipe_template WHERE folded_name = ?", folded(name));
}

std::optional<RecipeTemplate> RecipeTemplateTable::find(std::string_view name) {
    return Statement(*database_, "SELECT name, recipe FROM recipe_template WHERE folded_name = ?")
        .with(folded(name))
        .first(template_in);
}

std::vector<RecipeTemplate> RecipeTemplateTable::all() {
    auto found = Statement(*database_, "SELECT name, recipe FROM recipe_template ORDER BY id")
                     .rows(template_in);
    sort_by_name(found, &RecipeTemplate::name);
    return found;
}

}  // namespace quarterturn
