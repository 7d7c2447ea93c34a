#pragma once

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Whether two names lead to one file, by a link of either kind, also through a lock. What cannot be
// seen is taken for another file.
bool is_one_file(FileSystem& disk, const Path& file, FileSystem& other_disk, const Path& other);

}  // namespace quarterturn
