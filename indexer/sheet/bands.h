#pragma once
// Bands of photos: so many to a line, with their captions.

#include <span>

#include "indexer/sheet/flow.h"

namespace quarterturn {

struct CellGrid {
    int columns = 4;
    double height = 0;  // of a photo's cell, mm
    double caption_points = 7;
};

// How high a photo's cell is for its width when there is room enough: as most of the photos are,
// within limits.
double wanted_cell_height(std::span<const SheetBand> bands, double width);
// What the bands take one below the other, captions and all.
double height_of_bands(SheetFlow& flow, std::span<const SheetBand> bands, const CellGrid& grid);

// Puts the bands, going on to further pages where they have to. Heads are equally large on all.
void put_bands(SheetFlow& flow, std::span<const SheetBand> bands, const CellGrid& grid);

// The photos as put_bands places them, all in the first cell.
std::vector<PhotoItem> photos_in_cells(std::span<const SheetBand> bands, const SheetStyle& style,
                                       const CellGrid& grid);

}  // namespace quarterturn
