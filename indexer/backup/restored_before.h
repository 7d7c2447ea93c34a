#pragma once

#include <vector>

#include "indexer/backup/library_files.h"
#include "indexer/backup/manifest.h"

namespace quarterturn {

// Of a library that is restored into `to` for the second time, from other records of the same
// backup or for another client: removes what lies there from the first and is not among `files`.
// Only what the backup lists goes. Throws StoreError, before anything is removed, when something
// else lies there; DiskError.
void drop_restored_before(FileSystem& disk, const Path& to, const Manifest& listed,
                          const std::vector<LibraryFile>& files);

}  // namespace quarterturn
