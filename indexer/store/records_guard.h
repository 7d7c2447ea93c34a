#pragma once
// Services that copy folders between computers put another file of records in the place of ours,
// and leave beside it the changes (records.sqlite-wal) that belong to the one that is gone. SQLite
// cannot tell; joined, both are lost. So the library remembers which file it opened.

#include "indexer/store/library.h"

namespace quarterturn {

// Before the records are opened. Where changes wait that were made to another file, keeps copies of
// both and throws StoreError, unless they go together: a library that was copied as a whole is
// opened as ever.
void refuse_changes_of_another_file(const Path& library, FileSystem& disk);

// Of records that were written over while they were open (records_watch.h): keeps copies of that
// file and of the changes that do not belong to it, and remembers that they do not. Throws
// DiskError and StoreError.
void keep_overwritten(const Path& records, FileSystem& disk);
std::string overwritten_sentence(const Path& records);

// After it: which file that is.
void remember_records_file(const Path& library, FileSystem& disk);

}  // namespace quarterturn
