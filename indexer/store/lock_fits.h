#pragma once
// Whether a library's lock.json and its records belong together, found out before SQLite opens
// them: of a log that was written under another key SQLite makes nothing, and removes it.

#include "indexer/disk/file_system.h"
#include "indexer/lock/lock_file.h"

namespace quarterturn {

// By the first bytes of a file of records.
bool begins_as_plain_records(const Bytes& front);

// Where the records are not locked with these keys; with null, where they or files beside them are
// locked. Throws StoreError, also when they cannot be read, and DiskError; changes nothing.
void refuse_lock_that_does_not_fit(FileSystem& disk, const Path& folder, const KeysInHand& keys);

// Of a folder without lock.json; nothing is said of one that is no library.
void refuse_lost_lock_of_library(FileSystem& disk, const Path& folder);

// Whether the records are plain and files beside them are locked with these keys: the library was
// being unlocked for good. Throws StoreError and DiskError.
bool holds_half_of(FileSystem& disk, const Path& folder, const KeysInHand& keys);

// Whether anything in the folder but its records is locked with these keys, wherever it lies.
// Throws DiskError.
bool opens_something(FileSystem& disk, const Path& folder, const KeysInHand& keys);

// What can be said of it before anybody gives a passphrase: the folder has this lock, and neither
// records nor names are locked; or it is half put on or taken off, nothing is locked, and the
// records do not know it (lock_mark.h). Nothing is said of a folder that is no library.
void refuse_lock_on_plain_library(FileSystem& disk, const Path& folder, const LockFile& lock);

// The same while a library is being locked or unlocked: its records may still be plain, or again,
// and then they say whose lock that is, or what is locked does.
void refuse_records_of_other_keys(FileSystem& disk, const Path& folder, const KeysInHand& keys);

}  // namespace quarterturn
