#pragma once
// What the operating system's error numbers mean to someone at a chair with a comb in her hand.

#include "indexer/disk/file_system.h"

namespace quarterturn {

enum class Doing { reading, writing, moving, linking, removing, making_folder };

// A DiskError whose sentence names `file` and the next step. `error_number` is an errno.
DiskError disk_error(int error_number, const Path& file, Doing doing);

}  // namespace quarterturn
