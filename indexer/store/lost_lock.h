#pragma once

#include <array>
#include <optional>

#include "indexer/disk/file_system.h"
#include "indexer/lock/library_keys.h"
#include "indexer/store/database.h"

namespace quarterturn {

// The folders in which a library and a backup keep all that is hers.
inline constexpr std::array folders_of_hers{"photos", "consents", "inspiration"};

// Whether names in it were locked by some library, for who has no keys. Throws DiskError.
bool holds_locked_names(FileSystem& disk, const Path& folder);
// The same of these keys. Throws DiskError.
bool holds_names_locked_with(FileSystem& disk, const Path& folder, const KeysInHand& keys);

// The same with contents that are locked, too; what cannot be read is none.
std::optional<Path> first_locked_in_reach(FileSystem& disk, const Path& folder);

// Throws StoreError where a folder without a lock.json holds what only a locked library or its
// backup would: then that file is what is missing. Throws DiskError.
void refuse_lost_lock(FileSystem& disk, const Path& folder);
StoreError lost_lock(const Path& folder);
// The same of a library whose records are plain and name files that are not there: unlocking it was
// interrupted. Where all of them are there, what is locked is none of them.
void refuse_half_without_lock(FileSystem& disk, const Path& folder);

}  // namespace quarterturn
