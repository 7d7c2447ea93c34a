#pragma once
// What a library's records say of its files, of records that are not locked. SQLite does not open
// the file itself, so that nothing of its log and of locks on it changes.

#include <map>
#include <string>
#include <vector>

#include "indexer/disk/file_system.h"
#include "indexer/record/backup.h"

namespace quarterturn {

// The files that do not lie there under their names, relative to the folder. Where the records
// cannot be read, that file is what is missing.
std::vector<std::string> recorded_and_missing(FileSystem& disk, const Path& folder);

// Paths with their SHA-256, and the folders and marks of backups; nothing where the records cannot
// be read.
std::map<std::string, std::string> recorded_checksums(const Path& folder);
std::vector<Backup> recorded_backups(const Path& folder);

}  // namespace quarterturn
