#pragma once

#include "indexer/record/recipe.h"

namespace quarterturn {

// Puts back what was taken out of a recipe between `with` and `without`, and leaves the rest of
// what was written since, up to `now`.
Recipe put_back(const Recipe& now, const Recipe& with, const Recipe& without);

}  // namespace quarterturn
