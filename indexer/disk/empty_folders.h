#pragma once

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Removes the folder where it is empty, and then each folder above it, up to but without the top
// one of its path and `root`: `folder` is relative to it. Throws DiskError.
void drop_empty_folders(FileSystem& disk, const Path& root, Path folder);

}  // namespace quarterturn
