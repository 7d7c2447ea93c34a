#pragma once
// Whether a recipe says enough to make the look again.

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

// In the order of the recipe's parts. Every rule is common practice.
std::vector<RecipeFinding> check_recipe(const Recipe& recipe);

}  // namespace quarterturn
