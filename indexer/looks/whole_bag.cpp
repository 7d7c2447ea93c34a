#include "indexer/looks/whole_bag.h"

#include "indexer/store/database.h"

namespace quarterturn {
namespace {

// "record/" and "record" are the same folder.
Path without_slash_at_end(const Path& folder) {
    const Path whole = std::filesystem::absolute(folder).lexically_normal();
    return whole.has_filename() ? whole : whole.parent_path();
}

void refuse_if_there(FileSystem& disk, const Path& folder) {
    if (!disk.exists(folder)) return;
    throw StoreError(folder.string() + " is there already: choose a new folder.");
}

// What an export that was interrupted had written by then.
void remove_left(FileSystem& disk, const Path& folder) {
    for (const Path& entry : disk.list(folder)) {
        if (std::filesystem::is_directory(std::filesystem::symlink_status(entry))) {
            remove_left(disk, entry);
        } else {
            disk.remove(entry);
        }
    }
    disk.remove_empty_folder(folder);
}

}  // namespace

void write_whole_bag(FileSystem& disk, const Path& wanted,
                     const std::function<void(BagWriter&)>& fill) {
    const Path folder = without_slash_at_end(wanted);
    const Path unfinished =
        folder.parent_path() / ("." + folder.filename().string() + ".unfinished");
    refuse_if_there(disk, folder);
    if (disk.exists(unfinished)) remove_left(disk, unfinished);
    BagWriter bag(disk, unfinished);
    try {
        fill(bag);
        disk.rename_new(unfinished, folder);
    } catch (...) {
        bag.abandon();
        throw;
    }
    disk.sync_folder(folder.parent_path());
}

}  // namespace quarterturn
