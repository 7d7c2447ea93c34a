#pragma once
// What a lock left as it was, for who has no keys: told by names and first bytes. Relative to the
// library's folder, sorted; a folder that the disk does not list is among them. Throw DiskError.

#include <string>
#include <vector>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Of a library that is locked: what lies in it and can be read by anybody.
std::vector<std::string> readable_despite_lock(FileSystem& disk, const Path& folder);
// Of one whose lock was taken off: what lies in it and is locked still.
std::vector<std::string> locked_without_lock(FileSystem& disk, const Path& folder);
// By its name, and those of its folders: whatever it holds, it may be damaged.
bool lies_where_locked(const Path& below);

}  // namespace quarterturn
