#pragma once
// What stands on a look's contact sheet and on a sitting's sheet, from the records alone.

#include <span>

#include "indexer/looks/look_state.h"
#include "indexer/sheet/contact_sheet.h"
#include "indexer/sheet/sheet_content.h"

namespace quarterturn {

// Each usable photo of the look stands on the sheet once: the one that stands for its line of the
// shot list in its place, the others under "More frames". A photo that is not usable is there only
// when nothing better stands for its line. Photo files are sought below `library_folder`.
SheetContent contact_content(const LookState& state, const SheetWishes& wishes,
                             const Path& library_folder);

struct SittingState {
    Sitting sitting;
    Client client;
    std::optional<Wedding> wedding;
    std::vector<Photo> photos;  // in the order of time
};

SheetContent sitting_content(const SittingState& state, const Path& library_folder);

}  // namespace quarterturn
