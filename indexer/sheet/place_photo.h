#pragma once
// One photo in its box: the part around the head where the head is found, else the whole of it.

#include <span>

#include "indexer/sheet/flow.h"

namespace quarterturn {

// The share of the box's height that heads take on all of these photos; `aspect` is the box's width
// over its height.
double head_share_of(std::span<const SheetPhoto* const> photos, double aspect);

PhotoItem photo_in_cell(const SheetPhoto& photo, const Box& cell, double head_share);

// With the ground of its cell where it does not fill it.
void place_photo(SheetFlow& flow, const SheetPhoto& photo, const Box& cell, double head_share);

}  // namespace quarterturn
