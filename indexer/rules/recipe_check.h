#pragma once
// Whether a recipe says enough to make the look again. Every rule and number is common practice.
//
// What cannot be made up on the wedding morning bars sign-off: prep, parting, the barrel where
// curls are made, the build, how many pins, the accessory, the client's own words, the minutes. The
// rest is a warning. The check helps to remember; it does not take the place of a product's label,
// local law or training.

#include <string>
#include <vector>

#include "indexer/record/recipe.h"

namespace quarterturn {

enum class Weight { warning, bars_sign_off };

struct RecipeFinding {
    Weight weight = Weight::warning;
    std::string sentence;  // what is missing or unwise, and why

    bool operator==(const RecipeFinding&) const = default;
};

// In the order of the recipe's parts. A text of nothing but white space is empty.
std::vector<RecipeFinding> check_recipe(const Recipe& recipe);

// When a look has no recipe at all.
RecipeFinding no_recipe_finding();

}  // namespace quarterturn
