#pragma once
// What can be done to a look's recipe as a whole, each with its way back.

#include "indexer/record/people.h"
#include "indexer/record/recipe.h"
#include "ui/shell/edits.h"

namespace quarterturn {

// A revision, with the sitting it was written at. Taken back, it is a draft again.
Edit saving_recipe(const Look& look, const Recipe& recipe, LocalTime now);

// `after` becomes the draft in place of what was there; `said` as in "started from …".
Edit writing_anew(Library& library, LookId look, std::string said, const Recipe& after,
                  LocalTime now);

// The draft goes, and what was saved counts.
Edit going_back_to_saved(Library& library, LookId look);

// Something was taken out of the draft. Taken back, it comes in again beside what was written
// since.
Edit taking_out(LookId look, std::string said, const Recipe& with, const Recipe& without,
                LocalTime now);

Edit saving_template(Library& library, const std::string& name, const Recipe& recipe);
Edit removing_template(Library& library, const std::string& name);

}  // namespace quarterturn
