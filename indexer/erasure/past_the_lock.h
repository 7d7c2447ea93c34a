#pragma once
// What lies in a locked library past its lock: put there as it was, or moved there by hand, since a
// locked name opens in its own folder alone. What it holds tells whose it is.

#include <set>
#include <string>
#include <vector>

#include "indexer/erasure/erase.h"

namespace quarterturn {

// The disk as it lies beneath the lock, where the library has one.
FileSystem& disk_past_the_lock(Library& library);

// Those that hold a photo, a paper or a picture that goes, and that nobody else has, locked with
// the library's key or not, as they stand on the list of files to remove (listed_past_lock.h). What
// cannot be read is none. None of a library without a lock. Throws StoreError, and DiskError where
// the library itself cannot be listed.
std::vector<std::string> copies_past_the_lock(Library& library, const ErasurePlan& plan);

// What is to be said of those that are not `going`: recorded files are to be put back, `gone` are
// the checksums of what was erased, and of the rest nobody can tell. Or why the library cannot be
// looked through; nothing of a library without a lock. Files as they stand on that list.
std::vector<SaidOfFile> files_past_the_lock(Library& library, const std::vector<std::string>& gone,
                                            const std::set<std::string>& going);

}  // namespace quarterturn
