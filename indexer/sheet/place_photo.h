#pragma once
// One photo in its box: the part around the head where the head is found, else the whole of it.

#include <span>

#include "indexer/sheet/flow.h"

namespace quarterturn {

// The share of the box's height that heads take on all of these photos; `aspect` is the box's width
// over its height.
double head_share_of(std::span<const SheetPhoto* const> photos, double aspect);

void place_photo(SheetFlow& flow, const SheetPhoto& photo, const Box& box, double head_share);

}  // namespace quarterturn
