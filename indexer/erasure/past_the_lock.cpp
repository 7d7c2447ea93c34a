#include "indexer/erasure/past_the_lock.h"

#include <set>

namespace quarterturn {

std::vector<std::string> files_past_the_lock(Library& library) try {
    if (!library.keys()) return {};
    auto& locked = dynamic_cast<LockedFileSystem&>(library.disk());
    const auto none = [](const Path&) { return false; };
    std::set<Path> known;
    for (const Path& file : files_in_reach(locked, library.folder(), none).files) {
        known.insert(locked.place_of(file));
    }
    std::vector<std::string> sentences;
    for (const Path& file : files_in_reach(locked.beneath(), library.folder(), none).files) {
        if (known.contains(file)) continue;
        sentences.push_back(file.string() +
                            " was put there past the lock, so it may be of what is erased: remove "
                            "it, unless you know whose it is.");
    }
    return sentences;
} catch (const DiskError& error) {
    return {error.what()};
}

}  // namespace quarterturn
