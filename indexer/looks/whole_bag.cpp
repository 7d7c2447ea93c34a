#include "indexer/looks/whole_bag.h"

#include "indexer/store/database.h"

namespace quarterturn {
namespace {

// "record/" and "record" are the same folder.
Path without_slash_at_end(const Path& folder) {
    const Path whole = std::filesystem::absolute(folder).lexically_normal();
    return whole.has_filename() ? whole : whole.parent_path();
}

void refuse_if_there(FileSystem& disk, const Path& folder, const std::string& next_step) {
    if (disk.exists(folder)) throw StoreError(folder.string() + " is there already: " + next_step);
}

}  // namespace

void write_whole_bag(FileSystem& disk, const Path& wanted,
                     const std::function<void(BagWriter&)>& fill) {
    const Path folder = without_slash_at_end(wanted);
    const Path unfinished =
        folder.parent_path() / ("." + folder.filename().string() + ".unfinished");
    refuse_if_there(disk, folder, "choose a new folder.");
    refuse_if_there(disk, unfinished,
                    "an earlier export was interrupted. Delete that folder, and export again.");
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
