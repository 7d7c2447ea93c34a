#pragma once
// Which photos of a card or phone may be deleted there: those that the library holds whole and that
// a connected backup on another drive holds whole too. The program itself deletes nothing.

#include <functional>
#include <stop_token>
#include <string>
#include <vector>

#include "indexer/intake/import.h"
#include "indexer/store/library.h"

namespace quarterturn {

enum class Lacks {
    library,
    whole_file_in_library,
    // Where several backups hold it, what comes later here is said.
    backup,
    backup_on_card,        // it lies on the card itself
    backup_on_other_disk,  // it lies on the library's own, with which all would be gone
    backup_not_connected,  // so that nobody can look
    whole_file_in_backup,  // gone or damaged there
    in_bin,                // it lies in the bin, and goes for good
    photo,
    reading
};

struct FileToKeep {
    Path file;
    Lacks lacks = Lacks::library;
};

// What the file lacks and what to do next.
std::string sentence(const FileToKeep& file);

struct SafeToDelete {
    std::vector<Path> safe{};
    std::vector<FileToKeep> to_keep{};  // in the order of the walk, then what was left alone
    bool stopped = false;               // the rest was not looked at, and is not safe

    bool all_safe() const { return !stopped && to_keep.empty(); }
};

struct SafeWishes {
    std::vector<Path> sources{};                            // folders, walked whole, or files
    std::function<void(const ImportProgress&)> progress{};  // called from the calling thread
    std::stop_token stop{};
};

// Reads every photo there, its file in the library and those in the backups. Throws StoreError,
// also for a folder in which a library or a backup lies, or that lies in one.
SafeToDelete safe_to_delete(Library& library, const SafeWishes& wishes);

}  // namespace quarterturn
