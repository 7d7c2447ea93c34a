#pragma once
// Bands of photos: so many to a line, with their captions.

#include <span>

#include "indexer/sheet/flow.h"

namespace quarterturn {

// How high a photo's cell is for its width when there is room enough: what most of the photos are,
// within limits.
double wanted_cell_height(std::span<const SheetBand> bands, const SheetStyle& style);

// What the bands take one below the other, captions and all.
double height_of_bands(SheetFlow& flow, std::span<const SheetBand> bands, double cell_height);

// Puts the bands, going on to further pages where they have to. `head_share` as in crop.h.
void put_bands(SheetFlow& flow, std::span<const SheetBand> bands, double cell_height,
               double head_share);

// The share of the cell's height that heads take on all of these bands.
double head_share_of(std::span<const SheetBand> bands, double cell_aspect);

}  // namespace quarterturn
