#pragma once

#include <string>

#include "indexer/record/recipe.h"

namespace quarterturn {

// A sentence on the first count, measure or minutes that no recipe can mean, such as fewer than no
// pins; empty when all are possible.
std::string impossible_number(const Recipe& recipe);

}  // namespace quarterturn
