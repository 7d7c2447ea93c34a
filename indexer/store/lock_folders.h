#pragma once
// The folders of a library that is being locked or unlocked, once their files are.

#include <string_view>

#include "indexer/lock/locked_file_system.h"
#include "indexer/store/lock_library.h"

namespace quarterturn {

inline constexpr std::string_view left_readable =
    " It is not locked: who can read the disk can read it. When it can be read again, or a backup "
    "is connected, qturn verify locks it or puts it back.";
inline constexpr std::string_view stays_locked =
    " It stays locked, and its key is kept in lock.left.json: leave that there. When it can be "
    "read again, or a backup that holds it is connected, qturn lock remove goes on with it.";

// `below` is relative to the library's folder.
bool is_locked_name(LockedFileSystem& locked, const Path& below);

// Adds what was left to the problems, each once.
void name_left(const DiskError& error, std::string_view what_then, LockReport& report);

// Folders that held no file have names too.
void drop_plain_folders(LockedFileSystem& locked, const Path& folder, LockReport& report);

// False when any of them stays.
bool drop_locked_folders(LockedFileSystem& locked, const Path& folder, LockReport& report);

}  // namespace quarterturn
