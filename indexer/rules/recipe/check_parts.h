#pragma once
// The rules of the recipe check, in families. Each function adds what it finds.

#include <functional>
#include <string>

#include "indexer/record/recipe.h"
#include "indexer/rules/recipe/recipe_rules.h"

namespace quarterturn {

using AddFinding = std::function<void(RecipeRule, std::string sentence)>;

void check_cautions(const Recipe& recipe, const AddFinding& add);
void check_prep(const Recipe& recipe, const AddFinding& add);
void check_heat(const Recipe& recipe, const AddFinding& add);  // tool, protection, curls
void check_setting(const Recipe& recipe, const AddFinding& add);
void check_build(const Recipe& recipe, const AddFinding& add);  // sections to accessory
void check_second_look(const Recipe& recipe, const Recipe* first_look, const AddFinding& add);
void check_feedback(const Recipe& recipe, const AddFinding& add);
void check_minutes(const Recipe& recipe, const AddFinding& add);

}  // namespace quarterturn
