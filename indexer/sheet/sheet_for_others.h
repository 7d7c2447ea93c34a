#pragma once
// A sheet for others carries the look's name, the angles and the craft: she consented to photos,
// and not to her name, day, health or words.

#include "indexer/looks/look_state.h"
#include "indexer/sheet/sheet_content.h"

namespace quarterturn {

// The look's name, unless it names somebody: "Ceremony look" then.
std::string title_for_others(const Look& look, const std::vector<std::string>& names);

// Sections, parting, heat, build, pins, finish and minutes. A line that names somebody says no more
// than that it is left out.
SheetRecipe recipe_for_others(const Recipe& recipe, const std::vector<std::string>& names);

// Photos by their angles under the title, without times, files' names and what was noted of them.
// The recipe is the one given.
SheetContent content_for_others(SheetContent content, const std::string& title,
                                std::optional<SheetRecipe> recipe);

}  // namespace quarterturn
