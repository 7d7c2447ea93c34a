#pragma once
// A backup in whose folder lies the lock.json of another library.

#include "indexer/disk/file_system.h"
#include "indexer/lock/library_keys.h"

namespace quarterturn {

// Throw StoreError, and DiskError; change nothing.
//
// Where the backup there is not locked at all, for who has no keys.
void refuse_lock_on_plain_backup(FileSystem& disk, const Path& folder);
// Where what lies there was locked with other keys than these, which its lock.json gave.
void refuse_lock_of_another(FileSystem& disk, const Path& folder, const KeysInHand& keys);
// Where what lies there was locked with these keys, though its lock.json has others.
void refuse_another_lock_than(FileSystem& disk, const Path& folder, const KeysInHand& keys);

// Where a lock.json lies in the folder that a backup with these keys, or with none, is restored
// into, and is not that backup's, with whatever passphrase.
void refuse_lock_in_new_place(FileSystem& disk, const Path& to, const KeysInHand& keys);

}  // namespace quarterturn
