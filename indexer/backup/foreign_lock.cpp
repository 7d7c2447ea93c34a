#include "indexer/backup/foreign_lock.h"

#include "indexer/backup/backup_folder.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/lost_lock.h"

namespace quarterturn {
namespace {

StoreError lock_of_another_on_backup(const Path& folder) {
    return StoreError(
        (folder / lock_file_name).string() +
        " belongs to another library, and this backup does not open with it: put the right one "
        "back. The library of this backup holds a copy of it, and so does another backup of that "
        "library, beside READ ME.txt. It opens with the passphrase that the copy was made with, or "
        "with the recovery key. Nothing was changed.");
}

bool has_mark_of(FileSystem& disk, const Path& folder, const KeysInHand& keys) try {
    const auto lock = read_lock(disk, folder);
    return lock && keys && lock->mark == keys->mark();
} catch (const LockError&) {
    return false;
}

}  // namespace

void refuse_lock_on_plain_backup(FileSystem& disk, const Path& folder) {
    const Path list = folder / manifest_name;
    if (!disk.exists(list) || !parse_manifest(text_of_file(disk, list))) return;
    throw StoreError((folder / lock_file_name).string() +
                     " belongs to another library, and this backup is not locked: move lock.json "
                     "out of the folder, and try again. Nothing was changed.");
}

void refuse_lock_of_another(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    refuse_lock_on_plain_backup(disk, folder);
    if (!holds_locked_names(disk, folder) || holds_names_locked_with(disk, folder, keys)) return;
    throw lock_of_another_on_backup(folder);
}

void refuse_another_lock_than(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    if (holds_names_locked_with(disk, folder, keys)) throw lock_of_another_on_backup(folder);
}

void refuse_lock_in_new_place(FileSystem& disk, const Path& to, const KeysInHand& keys) {
    if (!disk.exists(to / lock_file_name) || has_mark_of(disk, to, keys)) return;
    throw StoreError(to.string() +
                     " is not empty (a lock.json that is not this backup's lies in it), and was "
                     "left as it is: name a new folder.");
}

}  // namespace quarterturn
