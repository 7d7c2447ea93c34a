#pragma once

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Gives a file that is not what it should be another name beside its own ("IMG_0001
// (changed).jpg"), and answers that. Throws DiskError.
Path set_aside(FileSystem& disk, const Path& changed);

}  // namespace quarterturn
