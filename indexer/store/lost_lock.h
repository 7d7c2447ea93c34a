#pragma once

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Throws StoreError where a folder without a lock.json holds what only a locked library or its
// backup would: then that file is what is missing. Throws DiskError.
void refuse_lost_lock(FileSystem& disk, const Path& folder);

}  // namespace quarterturn
