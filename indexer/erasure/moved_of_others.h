#pragma once
// What lies in the library where no record names it, and is a recorded photo, paper or picture of
// who stays: moved or copied there by hand.

#include <set>
#include <string>
#include <vector>

#include "indexer/store/erasure_sought.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct MovedOfOthers {
    std::set<std::string> paths;   // relative to the library's folder
    std::vector<SaidOfFile> said;  // of those whose own place is empty: they are to be put back
};

// `gone`: checksums of what is erased. Reads what has the size of a recorded file. Throws
// StoreError, and DiskError where the library itself cannot be listed.
MovedOfOthers moved_of_others(Library& library, const std::set<std::string>& gone);

}  // namespace quarterturn
