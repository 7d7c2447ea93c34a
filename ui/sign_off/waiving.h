#pragma once

#include "indexer/record/shot_list.h"
#include "ui/shell/edits.h"

namespace quarterturn {

Edit waiving(LookId look, const Waiver& waiver);
Edit taking_waiver_back(LookId look, const Shot& shot);

}  // namespace quarterturn
