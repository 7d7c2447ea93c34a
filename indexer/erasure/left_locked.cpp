#include "indexer/erasure/left_locked.h"

#include <algorithm>

#include "indexer/lock/lock_file.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/store/lock_leftovers.h"

namespace quarterturn {
namespace {

bool lies_in(const Path& path, const char* folder) {
    return *path.begin() == folder;
}

}  // namespace

LeftLocked::LeftLocked(Library& library) : library_(library) {
    const bool had_a_lock =
        !library.keys() && library.disk().exists(library.folder() / left_lock_name);
    if (!had_a_lock) return;
    for (std::string& path : locked_without_lock(library.disk(), library.folder())) {
        const auto bytes = bytes_unlocked(path);
        left_.push_back({std::move(path), bytes});
    }
}

// What was on its way in may be a part of a photo.
std::optional<std::int64_t> LeftLocked::bytes_unlocked(const Path& path) const try {
    if (lies_in(path, "cache") || lies_in(path, "incoming")) return std::nullopt;
    const FileState state = library_.disk().state(library_.folder() / path);
    return state.regular ? unlocked_size(state.bytes) : std::nullopt;
} catch (const DiskError&) {
    return std::nullopt;
}

void LeftLocked::remove_small_pictures() {
    std::erase_if(left_, [&](const Left& left) {
        const Path file = library_.folder() / left.path;
        if (!lies_in(left.path, "cache")) return false;
        try {
            if (library_.disk().is_folder(file)) return false;
            library_.disk().remove(file);
            library_.disk().sync_folder(file.parent_path());
            return true;
        } catch (const DiskError&) {
            return false;
        }
    });
}

std::optional<Path> LeftLocked::may_be(std::optional<std::int64_t> bytes) const {
    const auto found = std::ranges::find_if(
        left_, [&](const Left& left) { return !bytes || !left.bytes || left.bytes == bytes; });
    return found == left_.end() ? std::nullopt : std::optional(library_.folder() / found->path);
}

std::vector<SaidOfFile> LeftLocked::said() const {
    std::vector<SaidOfFile> said;
    for (const Left& left : left_) {
        const Path file = library_.folder() / left.path;
        said.push_back(
            {file, file.string() +
                       " stayed locked when the lock was taken off. By its size it is none of the "
                       "photos and papers that went, but it may be something of them that was "
                       "changed or put there: go on with qturn lock remove, look into it then, "
                       "and remove it if it is."});
    }
    return said;
}

}  // namespace quarterturn
