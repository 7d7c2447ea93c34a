#pragma once
// The files that a backup lacks, written on two threads.

#include "indexer/backup/backup_plan.h"
#include "indexer/intake/import.h"

namespace quarterturn {

struct HowToWrite {
    std::function<void(const ImportProgress&)> progress{};
    std::stop_token stop{};
};

struct WrittenFiles {
    std::int64_t copied = 0;
    std::int64_t renamed = 0;
    std::vector<bool> lacking{};          // for each file, in their order: it is not there
    std::vector<std::string> problems{};  // sentences: why
    std::vector<Path> lacking_files{};    // the library's file that each problem is of
    bool stopped = false;
};

// Each under its planned place. Throws DiskError when the backup cannot be written.
WrittenFiles write_missing(Library& library, const BackupFolder& backup,
                           const std::vector<PlannedFile>& files, const HowToWrite& how);

// Gives a file that waited in moving/ its name too. Throws DiskError.
void put_in_place(const BackupFolder& backup, const PlannedFile& planned);

}  // namespace quarterturn
