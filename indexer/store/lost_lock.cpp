#include "indexer/store/lost_lock.h"

#include <algorithm>

#include "indexer/lock/lock_file.h"
#include "indexer/lock/locked_file_system.h"
#include "indexer/lock/locked_name.h"

namespace quarterturn {
namespace {

bool any_name_looks_locked(FileSystem& disk, const Path& folder) {
    if (!disk.is_folder(folder)) return false;
    return std::ranges::any_of(disk.list(folder), [](const Path& entry) {
        return looks_locked(entry.filename().native());
    });
}

}  // namespace

bool holds_locked_names(FileSystem& disk, const Path& folder) {
    return std::ranges::any_of(folders_of_hers, [&](const char* name) {
        return any_name_looks_locked(disk, folder / name);
    });
}

bool holds_names_locked_with(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    LockedFileSystem locked(disk, folder, keys);
    return std::ranges::any_of(folders_of_hers, [&](const char* name) {
        return disk.is_folder(folder / name) && !locked.list(folder / name).empty();
    });
}

void refuse_lost_lock(FileSystem& disk, const Path& folder) {
    if (disk.exists(folder / lock_file_name)) return;
    if (holds_locked_names(disk, folder)) throw lost_lock(folder);
}

StoreError lost_lock(const Path& folder) {
    return StoreError(
        folder.string() +
        " was locked, and its lock.json is gone: without that file nothing in it can be read, with "
        "the passphrase or without. Copy lock.json into it from the newest backup, where it lies "
        "beside READ ME.txt, or from the library where this is a backup. It then opens with the "
        "passphrase that the copy was made with, or with the recovery key. Nothing was changed.");
}

}  // namespace quarterturn
