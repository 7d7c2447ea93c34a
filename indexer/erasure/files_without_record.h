#pragma once
// Files in the library's folders that no record speaks of.

#include <set>
#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

struct FilesWithoutRecord {
    std::vector<std::string> files;         // sorted
    std::vector<std::string> out_of_reach;  // folders that the disk does not list
};

// Of all that is hers, relative to the library's folder, also in the bin. Throws StoreError.
std::set<std::string> paths_in_records(Library& library);

// Without those of an erasure that is not finished. Relative to the library's folder. Throws
// StoreError and DiskError.
FilesWithoutRecord files_without_record(Library& library);

}  // namespace quarterturn
