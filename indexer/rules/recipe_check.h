#pragma once
// Whether a recipe says enough to make the look again. Every rule and number is common practice.
//
// What cannot be made up on the wedding morning bars sign-off: prep, parting, the barrel where
// curls are made, the build, how many pins, the accessory, the client's own words, the minutes. The
// rest is a warning; `recipe/recipe_rules.h` names each rule, and she may weigh them otherwise. The
// check helps to remember; it does not take the place of a product's label, local law or training.

#include <string>
#include <vector>

#include "indexer/record/recipe.h"
#include "indexer/rules/recipe/recipe_rules.h"

namespace quarterturn {

struct RecipeFinding {
    Weight weight = Weight::warning;
    std::string sentence;   // what is missing or unwise, and why
    std::string rule = {};  // the rule's name, where a rule found it

    bool operator==(const RecipeFinding&) const = default;
};

// In the order of the recipe's parts. A text of nothing but white space is empty. `first_look` is
// the recipe of the look that a second look comes from, where that is another one and it is known.
std::vector<RecipeFinding> check_recipe(const Recipe& recipe, const RecipeRules& rules = {},
                                        const Recipe* first_look = nullptr);

// When a look has no recipe at all.
RecipeFinding no_recipe_finding();

}  // namespace quarterturn
