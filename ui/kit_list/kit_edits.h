#pragma once
// What she does to a kit list.

#include "indexer/looks/kit_list.h"
#include "ui/shell/edits.h"

namespace quarterturn {

// As many as the line says are packed, or with `packed` false, nothing of it.
Edit change_tick(WeddingId wedding, const KitLine& line, bool packed);
Edit change_spare(int percent);

}  // namespace quarterturn
