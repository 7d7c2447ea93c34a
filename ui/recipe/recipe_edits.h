#pragma once
// What can be done to a look's recipe as a whole.

#include "indexer/record/people.h"
#include "indexer/record/recipe.h"
#include "ui/shell/edits.h"

namespace quarterturn {

// A revision, with the sitting it was written at. Undone, it is a draft again.
Edit saving_recipe(const Look& look, const Recipe& recipe, LocalTime now);

// `after` becomes the draft in place of what was there; `said` as in "started from …", "took out
// …". Undone, what was there before comes in again beside what was written since.
Edit writing_anew(LookId look, std::string said, const Recipe& after, LocalTime now);

// The draft goes, and what was saved counts.
Edit going_back_to_saved(LookId look);

Edit saving_template(const std::string& name, const Recipe& recipe);
Edit removing_template(const std::string& name);

}  // namespace quarterturn
