#pragma once
// What lies in the library where no record names it, and is a recorded photo, paper or picture:
// moved or copied there by hand.

#include <set>
#include <string>
#include <vector>

#include "indexer/store/erasure_sought.h"
#include "indexer/store/library.h"

namespace quarterturn {

// Paths are relative to the library's folder.
struct PlacedByHand {
    std::vector<std::string> of_what_goes;
    // Of who stays: where it lies in its own place, too, it is a copy; else it was moved.
    std::set<std::string> copies;
    std::set<std::string> moved;
    std::vector<SaidOfFile> said;  // of what was moved: it is to be put back

    bool of_others(const std::string& path) const {
        return copies.contains(path) || moved.contains(path);
    }
};

// `gone`: checksums of what is erased. Reads what has the size of a recorded file. Throws
// StoreError, and DiskError where the library itself cannot be listed.
PlacedByHand placed_by_hand(Library& library, const std::set<std::string>& gone);

}  // namespace quarterturn
