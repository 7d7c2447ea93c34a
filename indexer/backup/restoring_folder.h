#pragma once

#include "indexer/lock/locked_file_system.h"
#include "indexer/store/database.h"

namespace quarterturn {

// In the folder "restoring": what is being restored, which goes last.
inline constexpr const char* of_what_name = "of what.txt";

// Of a folder to restore into.
StoreError is_not_empty(const Path& to);

// Throws that where something lies in the folder "restoring", or in its place, that no restore has
// made, since all in it goes when the library is whole. `locked` is null where the backup has no
// lock. Throws DiskError.
void refuse_others_in(const Path& restoring, FileSystem& beneath, const LockedFileSystem* locked);

}  // namespace quarterturn
