#pragma once
// Steps of opening a file of records (database.h), to change it or to look.

#include <SQLiteCpp/SQLiteCpp.h>

#include <memory>
#include <string>

#include "indexer/store/database.h"

namespace quarterturn {

inline constexpr int application_id = 0x5174726E;  // "Qtrn"
inline constexpr int wait_for_others_ms = 5000;

// Trusts nothing that somebody may have put into the file, and can read the index of words.
void set_up(SQLite::Database& handle);
// The log stays as it is when the records are closed.
void leave_log(SQLite::Database& handle);
StoreError not_ours(const Path& file);
void refuse_unless_ours(SQLite::Database& handle, const Path& file);
// True when the file is older than this program. Throws StoreError when it is newer.
bool needs_migration(SQLite::Database& handle, const Path& file);

// Writes nothing, there or beside it. Throws StoreError when changes wait beside it, or it is
// older.
std::unique_ptr<SQLite::Database> open_unchangeable(const Path& file, FileSystem& disk);
// For a full disk: the records as they are now, in memory, with what waits beside them.
std::unique_ptr<SQLite::Database> copy_to_look_at(const Path& file, FileSystem& disk);
// The same of records that are open, to be changed in memory.
std::unique_ptr<SQLite::Database> copy_in_memory(SQLite::Database& records);

}  // namespace quarterturn
