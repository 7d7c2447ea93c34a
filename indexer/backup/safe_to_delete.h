#pragma once
// Which photos of a card or phone may be deleted there: those that the library holds whole and that
// a backup holds too. The program itself deletes nothing.

#include <functional>
#include <stop_token>
#include <string>
#include <vector>

#include "indexer/intake/import.h"
#include "indexer/store/library.h"

namespace quarterturn {

enum class Lacks { library, whole_file_in_library, backup, photo, reading };

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

// Reads every photo there and its file in the library. A backup whose drive is not connected is
// believed, as the library remembers it. Throws StoreError.
SafeToDelete safe_to_delete(Library& library, const SafeWishes& wishes);

}  // namespace quarterturn
