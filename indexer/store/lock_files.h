#pragma once
// The files of a library, locked or unlocked one by one.

#include "indexer/lock/locked_file_system.h"
#include "indexer/store/lock_library.h"

namespace quarterturn {

// By their names in plain words; the other files have the form that is wanted. Throw DiskError.
std::vector<Path> files_to_lock(LockedFileSystem& locked, const Path& folder);
std::vector<Path> files_to_unlock(LockedFileSystem& locked, const Path& folder);

void lock_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                LockReport& report);
void unlock_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                  LockReport& report);

}  // namespace quarterturn
