#pragma once
// What a backup still lacks: the library's files laid against the list of what lies there.

#include <functional>
#include <string>
#include <vector>

#include "indexer/backup/backup_folder.h"
#include "indexer/backup/library_files.h"

namespace quarterturn {

struct PlannedFile {
    LibraryFile file;
    // Where it is written: its own path, or a name in moving/ while the list of files still names
    // other bytes under that path.
    std::string place;
    std::string same_bytes{};  // a file there that holds them under another name; empty: none
    bool ours = false;         // what lies at its place was written by an earlier backup
};

struct BackupPlan {
    std::vector<LibraryFile> there;  // need nothing: listed, and of the right size
    std::vector<PlannedFile> to_write;
    std::vector<std::string> obsolete;  // of an earlier backup, and not in the library any longer
    std::int64_t bytes = 0;             // to be copied at most

    bool nothing_new() const { return to_write.empty() && obsolete.empty(); }
    bool any_in_the_way() const;
};

// `unfinished` is what an earlier backup may have left; `is_there` says whether what is listed lies
// there, and throws DiskError.
BackupPlan plan_backup(const Manifest& listed, const std::vector<std::string>& unfinished,
                       const std::vector<LibraryFile>& wanted,
                       const std::function<bool(const LibraryFile&)>& is_there);

}  // namespace quarterturn
