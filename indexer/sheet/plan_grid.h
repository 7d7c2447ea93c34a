#pragma once
// Photos arranged by the head plan: the front at the top, the back at the bottom, the client's left
// at the left, her right at the right, the three-quarters between them, the crown in the middle, a
// detail at the lower left.

#include <span>
#include <vector>

#include "indexer/record/words.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

struct PlanGrid {
    std::vector<Box> photos;  // one for each angle, all of one size
    std::vector<Box> free;    // where no photo lies, the middle first, then from the top left
};

// `caption` mm stay free below each photo, `gutter` mm between columns. Each angle once. With the
// four quarters alone, left and right stand half way between front and back.
PlanGrid plan_grid(std::span<const Angle> angles, const Box& area, double gutter, double caption);

}  // namespace quarterturn
