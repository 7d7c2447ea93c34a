#pragma once
// Which lock is on a library, as its own records say: by that another library's lock.json is told
// from its own while some files are locked and some are not. Noted before the library is locked or
// unlocked, kept while it has a lock or the key of one, and gone when it has none; that it had one
// stays.

#include <optional>
#include <string>

#include "indexer/disk/file_system.h"
#include "indexer/lock/library_keys.h"
#include "indexer/store/library.h"

namespace quarterturn {

// Of records that are not locked; nothing where they say none, or cannot be read.
std::optional<std::string> noted_lock_mark(const Path& folder);

// In records of either form. The key must be on the key ring. Throws StoreError, also while another
// program has the records open, and DiskError.
void note_lock_mark(FileSystem& disk, const Path& folder, const LibraryKeys& keys);
// In records that are not locked. Where that cannot be done, it stays, and is taken for no other.
void forget_lock_mark(FileSystem& disk, const Path& folder);

// Whether it has a lock or had one, as far as its records say: a version before noted less. Throws
// StoreError.
bool has_had_lock(Library& library);

}  // namespace quarterturn
