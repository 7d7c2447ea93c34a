#pragma once
// A backup: the library's files in a folder elsewhere, readable without the program
// (backup_folder.h). Only what is new is copied, and each copy is read back equal. What was moved
// in the library is moved there, what was erased is removed there, and with it the older copies of
// the records. At any instant the list of files there is that of the backup before or of this one,
// and all it names is whole: the new list is written when its files are, and files are removed only
// after it. A file that is damaged in the library is never copied, so a good one stays.

#include <chrono>
#include <functional>
#include <set>
#include <stop_token>
#include <string>
#include <vector>

#include "indexer/intake/import.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct BackupWishes {
    Path to{};
    LocalTime now{};
    std::chrono::sys_seconds utc{};
    bool read_all = false;  // also what lies there already, and write anew what is damaged
    std::function<void(const ImportProgress&)> progress{};  // called from the calling thread
    std::stop_token stop{};
};

struct BackupReport {
    Backup backup;
    std::int64_t copied = 0;              // files
    std::int64_t renamed = 0;             // files that lay there under another name
    std::int64_t removed = 0;             // files that are not in the library any longer
    std::string records{};                // the new copy of the records; empty: nothing had changed
    std::int64_t records_erased = 0;      // copies of the records that still held who was erased
    std::vector<std::string> problems{};  // sentences: files that are not in the backup
    std::vector<Path> lacking{};          // the library's file that each of them is of
    std::set<std::string> lost_there{};   // paths: what the drive had, and gave damaged or no more
    std::vector<Path> gone{};             // from the library, and whole in the backup
    std::vector<RefusedFile> staying{};   // that could not be removed there: the next one goes on
    bool on_same_disk = false;            // as the library, as far as that can be told
    bool stopped = false;                 // the backup before is as it was; run again, it goes on
};

// Throws StoreError when it would lie in the library or the library in it, when the folder holds
// something else, another library's backup or records newer than these, when there is not enough
// room, and while another program moves files of the library; DiskError when it cannot be written.
BackupReport back_up(Library& library, const BackupWishes& wishes);

}  // namespace quarterturn
