#pragma once
// Placing photos in sittings by their moments, and their files in the sittings' folders.

#include <optional>
#include <string>
#include <vector>

#include "indexer/disk/refused_file.h"
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
    std::vector<RefusedFile> not_moved;  // files that stay in a folder that is not theirs
};

// Sorts every photo that she has not placed by hand, suggests stages, and tidies the folders. Where
// a photo falls by time is told anew from its moment each time, so it is no action of hers: it
// stands in no undo list, and changes when sittings or clocks change.
SortReport sort_by_time(Library& library);

// What waits for her to place it, in the order of moments: by their time, these fit no sitting or
// several. Writes nothing.
std::vector<UnplacedPhoto> unplaced_photos(Library& library);

// Moves each photo file whose folder is not its sitting's. Safe to interrupt: the file stands under
// the new name before the record says so, and under the old one until then. Answers what the disk
// did not let it move, which stays where it is. Does nothing while another program brings photos
// in, which ends with the same.
std::vector<RefusedFile> tidy_folders(Library& library);

// By the devices' clocks as they are set now; the shift proposed is to stand in place of the one
// set. A shift that she declined is proposed no more; another one of the same device is.
std::vector<ClockShift> propose_clock_shifts(Library& library);
void decline_clock_shift(Library& library, const ClockShift& shift);
// From two photos of the same moment. Throws StoreError when one is not there or carries no time.
ClockShift clock_shift_from_pair(Library& library, PhotoId wrong, PhotoId right);
// Applies the shift as one action that can be undone, and sorts again.
SortReport apply_clock_shift(Library& library, const ClockShift& shift);

// The one way to undo and redo: where photos may belong elsewhere by their time, they are sorted
// again afterwards. Each answers and throws StoreError as History does.
std::optional<Turned> undo(Library& library);
std::optional<Turned> redo(Library& library);

}  // namespace quarterturn
