#pragma once

#include <set>
#include <string>
#include <vector>

#include "indexer/backup/backup_folder.h"
#include "indexer/intake/import.h"

namespace quarterturn {

struct ClearedAway {
    std::set<std::string> removed{};     // paths in the backup
    std::vector<RefusedFile> staying{};  // that could not be removed
};

// Removes files of a backup that its list does not name any longer; one that cannot be removed
// keeps no other. What is not there is passed over; what stays is kept in "unfinished", so that the
// next backup goes on.
ClearedAway clear_away(const BackupFolder& folder, const std::vector<std::string>& paths);

}  // namespace quarterturn
