#pragma once
// Where parting and accessory belong by the recipe that was signed off and by the newest: what
// photos do not show, told from the records.

#include <string>
#include <vector>

#include "indexer/record/recipe.h"

namespace quarterturn {

// A sentence for each that differs, the parting first: "The recipe of today parts 2 cm left of the
// centre; agreed was the middle." What only one of the two recipes tells is no difference, and
// neither is spelling: capitals, spaces and a full stop at the end do not count. Accessories belong
// together by their name.
std::vector<std::string> recipe_hints(const Recipe& agreed, const Recipe& today);

}  // namespace quarterturn
