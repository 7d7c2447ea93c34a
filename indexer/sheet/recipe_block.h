#pragma once
// The recipe at the foot of a sheet: cautions first, then the rest in columns.

#include "indexer/sheet/flow.h"

namespace quarterturn {

// What the recipe takes on one page; nothing when it is longer than a page.
std::optional<double> height_of_recipe(SheetFlow& flow, const SheetRecipe& recipe);

// Puts the recipe where the flow stands, or whole on a new page; one that is longer than a page
// goes on to further pages.
void put_recipe(SheetFlow& flow, const SheetRecipe& recipe);

}  // namespace quarterturn
