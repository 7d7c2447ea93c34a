#pragma once
// The files of a library, locked or unlocked one by one.

#include "indexer/lock/locked_file_system.h"
#include "indexer/store/lock_library.h"

namespace quarterturn {

// By their names in plain words; the other files have the form that is wanted. Where a library is
// being locked the texts at its top are among them, locked or not. Throw DiskError.
FilesInReach files_to_lock(LockedFileSystem& locked, const Path& folder);
FilesInReach files_left_unlocked(LockedFileSystem& locked, const Path& folder);
FilesInReach files_to_unlock(LockedFileSystem& locked, const Path& folder);

// Files and folders that the disk does not give, and what is no ordinary file, stay as they are and
// are named.
void lock_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                LockReport& report);
// The same of a library that is locked: what lies beside its locked file stays, too.
void lock_left_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                     LockReport& report);
// False when a file or folder stays locked, since the disk does not give it: its key is needed
// still.
bool unlock_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                  LockReport& report);

}  // namespace quarterturn
