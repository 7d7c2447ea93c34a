#pragma once
// The records of a library that is being restored, in a folder of their own until its files are
// there.

#include <string>

#include "indexer/backup/backup_folder.h"
#include "indexer/store/library.h"

namespace quarterturn {

// The copy of the records whose time begins so; the newest where it is empty. Throws StoreError
// when there is none.
std::string chosen_records(const BackupFolder& backup, const Manifest& listed,
                           const std::string& time);

// "2026-11-07 10:12:03" of the path of such a copy.
std::string records_time(const std::string& path);

// Makes the folder a library with these records and without files, whatever lay there. Throws
// StoreError when the copy is damaged, and DiskError.
Library open_copy(const BackupFolder& backup, const Manifest& listed, const std::string& records,
                  FileSystem& disk, const Path& folder);

// Leaves in the records what is this client's. Throws StoreError when there is none of that name.
void leave_client(Library& library, const std::string& client, Date today);

}  // namespace quarterturn
