#pragma once
// Files to remove (erasure_table.h) that lie past a locked library's lock (past_lock.h). On the
// list they are told from paths in plain words, which may be a recorded file's.

#include <optional>
#include <string>
#include <vector>

#include "indexer/disk/refused_file.h"

namespace quarterturn {

// Of a path relative to the library's folder, as it lies on the disk.
std::string listed_past_lock(const Path& lies);
// Such a path again; nothing where the one that is listed is in plain words.
std::optional<Path> place_past_lock(const std::string& listed);

// Of a library that is being unlocked, whose records are so already: removes those that stand on
// the list, which would have other places then. Answers what the disk did not do. Throws
// StoreError.
std::vector<RefusedFile> remove_listed_past_lock(FileSystem& disk, const Path& folder);

}  // namespace quarterturn
