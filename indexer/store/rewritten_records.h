#pragma once
// The file of the records, written anew under the lock or without it.

#include "indexer/disk/file_system.h"

namespace quarterturn {

enum class RecordsForm { plain, locked };

// Throws StoreError while another program has the records open, DiskError.
void refuse_unless_alone_with(FileSystem& disk, const Path& records);

// Writes a new file beside it (SQLite's VACUUM INTO), has SQLite check that, and gives it the old
// one's name; does nothing when it has that form already. Nobody else may open the file meanwhile.
// Its key must be on the key ring, and nothing left there by a try before
// (remove_unfinished_records). Throws StoreError and DiskError; the file is then as it was.
void rewrite_records(FileSystem& disk, const Path& records, RecordsForm form);

}  // namespace quarterturn
