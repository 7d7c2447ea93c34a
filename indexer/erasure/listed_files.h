#pragma once
// Files whose records are gone: which there are, and removing them.

#include <string>
#include <vector>

#include "indexer/intake/move_lock.h"

namespace quarterturn {

// The photos' own files, what was kept of them where they were found changed, and what is kept of
// them in cache/ and incoming/, relative to the library's
// folder.
std::vector<std::string> files_of_photos(Library& library, const std::vector<Photo>& photos);

// Throws StoreError when another program holds the lock.
void refuse_unless_alone(const MoveLock& lock);

// Removes the files that stand on the list and what the records still held. The move lock must be
// held. Throws DiskError and StoreError; what is left stays on the list.
void finish_alone(Library& library);

}  // namespace quarterturn
