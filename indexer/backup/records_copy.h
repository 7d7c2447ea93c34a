#pragma once

#include <string>

#include "indexer/backup/backup_folder.h"
#include "indexer/store/library.h"

namespace quarterturn {

// Where a copy of the records waits in a backup until it is whole.
inline constexpr auto waiting_records = "records/.writing.sqlite";

// Writes the records as they are now into the backup, read back and found sound; `path` is where
// they get their name. Answers their SHA-256. Throws StoreError and DiskError.
std::string write_records_copy(Library& library, const BackupFolder& folder,
                               const std::string& path);

}  // namespace quarterturn
