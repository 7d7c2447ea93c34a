#pragma once
// What was wrong with a file of the library, and what came of it.

#include <string>

#include "indexer/disk/file_system.h"

namespace quarterturn {

enum class Trouble { missing, changed, unreadable };

struct FileTrouble {
    std::string path;  // relative to the library's folder
    Trouble trouble = Trouble::missing;
    Path healed_from{};  // the folder of the backup it was put back from; empty: it was not
    Path set_aside{};    // where the changed file lies now
    Path held_by{};      // of a check that only looks: the folder of a backup that lists it
    // Where a missing one lies, relative to the library's folder: somebody moved it.
    std::string moved_to{};
    bool moved_back = false;
    // Where a whole copy of one that changed lies, relative to the library's folder: no record
    // speaks of it.
    std::string copy_at{};
    bool healed_by_copy = false;
    std::string not_put_back{};  // a sentence: why what was found could not be put in its place

    bool healed() const { return moved_back || healed_by_copy || !healed_from.empty(); }
};

// What is wrong with it and what to do next.
std::string sentence(const FileTrouble& trouble);

// A sentence about a file without a record, whose path is shown to her as `shown`.
std::string words_without_record(const Path& path, const std::string& shown, bool anything_erased);

}  // namespace quarterturn
