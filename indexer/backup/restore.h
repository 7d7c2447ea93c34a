#pragma once
// A library made again from a backup, in a new place. Nothing that is there is ever written over.
// Until all of it is there the folder is no library, but a restore that can be gone on with:
// its folder "restoring" says of what. When the same backup is asked for other records or another
// client there, what lies in the folder is brought in line with that.

#include <functional>
#include <stop_token>
#include <string>
#include <vector>

#include "indexer/intake/import.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct RestoreWishes {
    Path from{};           // the folder of the backup
    Path to{};             // a new or empty folder
    std::string client{};  // by her name, only what is hers; empty: everything
    // Which copy of the records: the newest that was made by then (UTC), as by the end of
    // "2026-11-07"; empty: the newest of all.
    std::string records{};
    LocalTime now{};
    std::function<void(const ImportProgress&)> progress{};  // called from the calling thread
    std::stop_token stop{};
};

struct RestoreReport {
    Path library{};
    std::string records{};                // the copy of the records that was taken
    std::int64_t files = 0;               // that are there now, checked
    std::vector<std::string> problems{};  // sentences: what could not be restored
    bool stopped = false;                 // no library yet; run again, it goes on
};

// Throws StoreError when `from` is no backup, when `to` holds something, lies in the backup or the
// backup in it, when there is no such client or copy of the records, when that copy is damaged, and
// when there is not enough room; DiskError when it cannot be written.
RestoreReport restore(FileSystem& disk, const RestoreWishes& wishes);

// When the copies of the records were made, as `RestoreWishes::records` names them, the oldest
// first: "2026-11-07 10:12:03". Throws as restore does.
std::vector<std::string> times_of_records(FileSystem& disk, const Path& backup);

}  // namespace quarterturn
