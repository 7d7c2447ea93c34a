#pragma once

#include "indexer/store/lock_files.h"

namespace quarterturn {

// Of a library that is being unlocked: unlocks what lies past the lock and is sealed with its key,
// and lays all that lies so into its folder's plain name, under its own. What stays as it is, and
// what was unlocked, is named. False when something stays sealed with the key.
bool unlock_past_lock(LockedFileSystem& locked, const Path& folder, LockReport& report);

}  // namespace quarterturn
