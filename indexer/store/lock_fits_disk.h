#pragma once
// Asked before a library is locked, while nothing is written.

#include <vector>

#include "indexer/lock/locked_file_system.h"

namespace quarterturn {

// Each new path is one that the system takes, also while a file waits under another name: locked,
// it is longer. Throws StoreError.
void refuse_long_paths(LockedFileSystem& locked, const std::vector<Path>& files);

// Each file is there twice while it is locked, and so are the records. Throws StoreError.
void refuse_without_room_to_lock(FileSystem& disk, const Path& folder,
                                 const std::vector<Path>& files);

}  // namespace quarterturn
