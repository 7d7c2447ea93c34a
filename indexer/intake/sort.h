#pragma once
// Placing photos in sittings by their moments, and their files in the sittings' folders.

#include <string>
#include <vector>

#include "indexer/rules/sorting.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct UnplacedPhoto {
    PhotoId photo;
    std::vector<SittingId> fits;  // none, or several
    std::string why;              // a sentence: no time in the file, fits no sitting, fits two
};

struct SortReport {
    std::vector<PhotoId> placed;  // in a sitting by this run
    std::vector<UnplacedPhoto> unplaced;
};

// Sorts every photo that she has not placed by hand, suggests stages, and moves files (see below).
SortReport sort_by_time(Library& library);

// Moves each photo file whose folder is not its sitting's. Safe to interrupt: the file stands under
// the new name before the record says so, and under the old one until then.
void tidy_folders(Library& library);

std::vector<ClockShift> propose_clock_shifts(Library& library);
// Applies the shift as one action that can be undone, and sorts again.
SortReport apply_clock_shift(Library& library, const ClockShift& shift);

}  // namespace quarterturn
