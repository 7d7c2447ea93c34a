#pragma once
// The recipe at the foot of a sheet: cautions first, then the rest in columns.

#include "indexer/sheet/flow.h"

namespace quarterturn {

// What the recipe takes on one page; nothing when it is longer than a page.
std::optional<double> height_of_recipe(SheetFlow& flow, const SheetRecipe& recipe);

enum class RecipeRoom {
    one_page,  // whole where the flow stands or whole on a new page, unless it is longer than one
    anywhere   // begins where the flow stands as soon as a few lines find room
};

// Goes on to further pages where it has to.
void put_recipe(SheetFlow& flow, const SheetRecipe& recipe, RecipeRoom room = RecipeRoom::one_page);

}  // namespace quarterturn
