#pragma once
// Which part of a photo is shown, so that heads stand equally large beside each other.

#include <span>

#include "indexer/sheet/page.h"

namespace quarterturn {

struct HeadedPhoto {
    Size upright;  // pixels
    Part head;     // head and hair, in shares of the upright picture the right way round
};

// How much of the cell's height a head takes, the same for all of these photos: a little more than
// half, and more where a photo was taken closer, up to what still leaves air around the hair
// (common practice). `aspect` is the cell's width over its height.
double common_head_share(std::span<const HeadedPhoto> photos, double aspect);

// The part around the head, in the cell's proportions and inside the picture. A head that was taken
// too close for its share gets all the picture can give.
Part part_around_head(const HeadedPhoto& photo, double share, double aspect);

// The largest box of the picture's proportions in the middle of the cell.
Box whole_in_cell(const Size& upright, const Box& cell);

}  // namespace quarterturn
