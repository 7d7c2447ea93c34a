#pragma once
// What in a recipe asks for the caution about heat, or about sprays that catch fire, beside it.
// Judged by the tools and products that are named and by her own words.

#include <string>
#include <vector>

#include "indexer/record/recipe.h"

namespace quarterturn {

bool uses_heat(const Step& step);
bool uses_spray(const Step& step);

// The sentences of indexer/record/caution.h that belong beside it; none when nothing is hot and
// nothing is sprayed.
std::vector<std::string> cautions_beside(const Step& step);
std::vector<std::string> cautions_beside_prep(const Recipe& recipe);    // all before the build
std::vector<std::string> cautions_beside_finish(const Recipe& recipe);  // all after it

}  // namespace quarterturn
