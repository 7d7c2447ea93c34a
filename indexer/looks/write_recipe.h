#pragma once
// Writing recipes: saving a revision with its sitting, and starting from what is there.

#include <optional>

#include "indexer/store/library.h"

namespace quarterturn {

// The sitting at which something was written: the one of the look's that goes on at that moment,
// else the first of that day; nothing on a day without one.
std::optional<SittingId> sitting_at(Library& library, const Look& look, LocalTime moment);

// Throws StoreError for a number that no recipe can mean.
void refuse_impossible_numbers(const Recipe& recipe);

// Saves a revision with the sitting it was written at. Throws StoreError.
RevisionId save_recipe(Library& library, const Look& look, const Recipe& recipe, LocalTime now);

// The recipe of another look as a start for this one; nothing when that has none.
std::optional<Recipe> start_from_look(Library& library, const Look& look, const Look& other);

}  // namespace quarterturn
