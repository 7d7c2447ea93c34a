#pragma once
// What lies in a locked library past its lock: put there as it was, or moved there by hand, since a
// locked name opens in its own folder alone.

#include "indexer/store/library.h"

namespace quarterturn {

// A sentence for each, as nobody can tell what it is of, or one that says why the library cannot be
// looked through; none of a library without a lock. Folders that the disk does not list are passed
// over.
std::vector<std::string> files_past_the_lock(Library& library);

}  // namespace quarterturn
