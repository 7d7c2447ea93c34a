#pragma once
// The recipe at the foot of a sheet: cautions first, then the rest in columns.

#include "indexer/sheet/flow.h"

namespace quarterturn {

// What the recipe takes on one page; nothing when it is longer than a page.
std::optional<double> height_of_recipe(SheetFlow& flow, const SheetRecipe& recipe);

// Puts the recipe where the flow stands, going on to further pages where it has to.
void put_recipe(SheetFlow& flow, const SheetRecipe& recipe);

}  // namespace quarterturn
