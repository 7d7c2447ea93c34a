#pragma once

#include "indexer/record/shot_list.h"
#include "ui/shell/edits.h"

namespace quarterturn {

// Each knows its way back to what was there.
Edit waiving(Library& library, LookId look, const Waiver& waiver);
Edit taking_waiver_back(Library& library, LookId look, const Shot& shot);

}  // namespace quarterturn
