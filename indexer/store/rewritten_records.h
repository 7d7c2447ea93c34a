#pragma once
// The file of the records, written anew under the lock or without it.

#include <functional>

#include "indexer/disk/file_system.h"

namespace SQLite {
class Database;
}

namespace quarterturn {

enum class RecordsForm { plain, locked };

// Throws StoreError while another program has the records open, DiskError.
void refuse_unless_alone_with(FileSystem& disk, const Path& records);

// Has the file changed by `change` in whichever form it has, and all of it written there, nothing
// in its log. Its key must be on the key ring. Throws StoreError, also while another program has
// the records open, and DiskError.
void change_alone(FileSystem& disk, const Path& records,
                  const std::function<void(SQLite::Database& records)>& change);

// Writes a new file beside it (SQLite's VACUUM INTO), has SQLite check that, and gives it the old
// one's name; does nothing when it has that form already. Nobody else may open the file meanwhile.
// Its key must be on the key ring, and nothing left there by a try before
// (remove_unfinished_records). Throws StoreError and DiskError; the file is then as it was.
void rewrite_records(FileSystem& disk, const Path& records, RecordsForm form);

}  // namespace quarterturn
