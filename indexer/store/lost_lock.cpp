#include "indexer/store/lost_lock.h"

#include <algorithm>

#include "indexer/lock/lock_file.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/lock/locked_file_system.h"
#include "indexer/lock/locked_name.h"
#include "indexer/store/recorded_and_missing.h"

namespace quarterturn {
namespace {

bool is_of_a_lock(const Path& entry) {
    const std::string name = entry.filename().native();
    return looks_locked(name) || is_front_of_locked_name(name);
}

std::optional<Path> first_locked_in(FileSystem& disk, const Path& folder) {
    if (!disk.is_folder(folder)) return std::nullopt;
    const std::vector<Path> entries = disk.list(folder);
    const auto found = std::ranges::find_if(entries, is_of_a_lock);
    return found == entries.end() ? std::nullopt : std::optional(*found);
}

std::optional<Path> first_locked(FileSystem& disk, const Path& folder) {
    for (const char* name : folders_of_hers) {
        if (auto found = first_locked_in(disk, folder / name)) return found;
    }
    return std::nullopt;
}

bool begins_as_locked(FileSystem& disk, const Path& file) try {
    return begin_as_locked(disk.read_front(file, locked_size(0)));
} catch (const DiskError&) {
    return false;
}

// A folder of hers may have a name that looks locked.
std::optional<Path> first_locked_file(FileSystem& disk, const Path& folder) {
    if (!holds_locked_names(disk, folder)) return std::nullopt;
    for (const char* name : folders_of_hers) {
        for (const Path& file : files_below(disk, folder / name)) {
            const Path below = file.lexically_relative(folder / name);
            if (std::ranges::any_of(below, is_of_a_lock) && begins_as_locked(disk, file)) {
                return file;
            }
        }
    }
    return std::nullopt;
}

constexpr auto where_it_is =
    " Copy lock.json into it from the newest backup, where it lies beside READ ME.txt";

}  // namespace

bool holds_locked_names(FileSystem& disk, const Path& folder) {
    return first_locked(disk, folder).has_value();
}

// Who may not look into a folder of hers is told so elsewhere.
std::optional<Path> first_locked_in_reach(FileSystem& disk, const Path& folder) try {
    return first_locked_file(disk, folder);
} catch (const DiskError&) {
    return std::nullopt;
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
        "the passphrase or without." +
        where_it_is +
        ", or from the library where this is a backup. It then opens with the passphrase that the "
        "copy was made with, or with the recovery key. Nothing was changed.");
}

void refuse_half_without_lock(FileSystem& disk, const Path& folder) {
    if (disk.exists(folder / lock_file_name) || disk.exists(folder / left_lock_name)) return;
    const auto locked = first_locked_in_reach(disk, folder);
    if (!locked || recorded_and_missing(disk, folder).empty()) return;
    throw StoreError(
        folder.string() +
        " was being unlocked for good, and its lock.json is gone: without that file what is still "
        "locked in it, such as " +
        locked->lexically_relative(folder).string() +
        ", cannot be read, with the passphrase or without." + where_it_is +
        ", and go on with qturn lock remove and the passphrase that the copy was made with, or the "
        "recovery key. Where there is no copy of it, move what is still locked out of the folder "
        "and keep it: the rest then opens. Nothing was changed.");
}

}  // namespace quarterturn
