#pragma once
// Files that a lock left as they were, since the disk did not give them when it was put on or taken
// off.

#include <stop_token>
#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

// Of a locked library: locks what lies unlocked in it. A sentence for each file that was, or that
// stays so. Throws StoreError and DiskError.
std::vector<std::string> lock_what_lies_open_in(Library& library, const std::stop_token& stop);
// A sentence for each; changes nothing.
std::vector<std::string> what_lies_open_in(Library& library);

// The library's lock, for what lies past it; it must have one.
LockedFileSystem& past_lock_of(Library& library);
// What is locked with the library's key, and was moved by hand to where the lock does not see it:
// relative to the folder, as it lies there, without what an erasure has still to remove. Nothing
// where the library has no lock. Throws StoreError.
std::vector<std::string> moved_past_lock(Library& library);
std::string lies_past_lock(const std::string& path);

// Whether a file that no record speaks of is one that some lock still holds, by its name: it may
// be a photo of hers. Relative to the library's folder, as it lies there.
bool is_still_locked(const std::string& path);
// What that means and what to do.
std::string still_locked(Library& library, const std::string& path);

}  // namespace quarterturn
