#pragma once
// Files that a lock left as they were when it was taken off. Nobody can tell what they are of, and
// the key that is kept would bring them back.

#include "indexer/store/library.h"

namespace quarterturn {

// Relative to the library's folder; none while it has a lock. Throws DiskError.
std::vector<std::string> left_locked(Library& library);

// Throws StoreError where there are any, and DiskError.
void refuse_while_left_locked(Library& library);

}  // namespace quarterturn
