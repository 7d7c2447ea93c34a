#pragma once
// Files whose records are gone: which there are, and removing them.

#include "indexer/erasure/stray_files.h"
#include "indexer/intake/move_lock.h"

namespace quarterturn {

// The photos' own files, what else is theirs (stray_files.h), and what is kept of them in cache/
// and incoming/. Throws StoreError and DiskError.
FilesToGo files_of_photos(Library& library, const std::vector<Photo>& photos,
                          const FilesWithoutRecord& strays);

// Throws StoreError when another program holds the lock.
void refuse_unless_alone(const MoveLock& lock);

// Removes the files that stand on the list and what the records still held. The move lock must be
// held. Throws DiskError and StoreError; what is left stays on the list.
void finish_alone(Library& library);

}  // namespace quarterturn
