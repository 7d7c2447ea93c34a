#include "indexer/store/lock_library.h"

#include <algorithm>

#include "indexer/disk/folder_lock.h"
#include "indexer/lock/key_ring.h"
#include "indexer/store/left_lock.h"
#include "indexer/store/listed_past_lock.h"
#include "indexer/store/lock_files.h"
#include "indexer/store/lock_fits.h"
#include "indexer/store/lock_fits_disk.h"
#include "indexer/store/lock_leftovers.h"
#include "indexer/store/lock_mark.h"
#include "indexer/store/recorded_and_missing.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_unwritable.h"
#include "indexer/store/rewritten_records.h"

namespace quarterturn {
namespace {

LockFile lock_there(FileSystem& disk, const Path& folder) {
    if (auto lock = read_lock(disk, folder)) return *lock;
    throw StoreError(folder.string() + " has no lock.");
}

void refuse_unless_held(const FolderLock& folder) {
    if (folder.held()) return;
    throw StoreError(
        "Another window or command is at work on this library: wait until that is done, and try "
        "again. Nothing was changed.");
}

void refuse_rest_of_a_lock(FileSystem& disk, const Path& folder) {
    refuse_lock_that_does_not_fit(disk, folder, nullptr);
    const auto left = read_left_lock(disk, folder);
    if (!left) return;
    if (locked_without_lock(disk, folder).empty()) {
        throw StoreError(why_left_lock_is_there(disk, folder, *left) + " Nothing was changed.");
    }
    throw StoreError(folder.string() +
                     " still holds files under the lock that it had before, which could not be "
                     "read, or were not there, when that was taken off: go on with those first "
                     "(qturn lock remove). Nothing was changed.");
}

void refuse_unless_lockable(FileSystem& disk, const Path& folder) {
    if (!disk.exists(folder / records_file_name)) {
        throw StoreError(folder.string() + " is no library (it holds no " + records_file_name +
                         "): name the folder of a library.");
    }
    refuse_unless_writable(folder / records_file_name);
    const auto lock = read_lock(disk, folder);
    if (!lock) return refuse_rest_of_a_lock(disk, folder);
    throw StoreError(folder.string() + (lock->state == LockState::locked
                                            ? " is locked already."
                                            : " is being locked or unlocked for good already: go "
                                              "on with that first."));
}

// Copies that were kept of replaced records, and what a service left: nobody knows their keys.
void refuse_plain_records(FileSystem& disk, const Path& folder) {
    for (const Path& entry : disk.list(folder)) {
        if (!is_records_of_others(entry)) continue;
        throw StoreError(entry.string() +
                         " lies beside the records and would stay readable: look whether you need "
                         "it, move it out of the library, and try again. Nothing was changed.");
    }
}

// The records, and copies of them from before an update.
std::vector<Path> files_of_records(FileSystem& disk, const Path& folder) {
    std::vector<Path> files{folder / records_file_name};
    for (const Path& entry : disk.list(folder)) {
        const std::string name = entry.filename().native();
        const bool copy = name.starts_with("records.sqlite.version-") && name.ends_with(".copy");
        if (copy) files.push_back(entry);
    }
    return files;
}

void rewrite_all_records(FileSystem& disk, const Path& folder, RecordsForm form) {
    remove_unfinished_records(disk, folder);
    for (const Path& file : files_of_records(disk, folder)) rewrite_records(disk, file, form);
}

LockReport go_on_locking(LockedFileSystem& locked, const Path& folder, LockFile lock,
                         const LockWishes& wishes) {
    LockReport report;
    rewrite_all_records(locked.beneath(), folder, RecordsForm::locked);
    lock_files(locked, folder, wishes, report);
    if (report.stopped) return report;
    lock.state = LockState::locked;
    write_lock(locked.beneath(), folder, lock);
    return report;
}

// One that is missing may lie elsewhere, locked.
bool all_recorded_are_there(FileSystem& disk, const Path& folder, LockReport& report) {
    const auto missing = recorded_and_missing(disk, folder);
    if (missing.empty()) return true;
    report.problems.push_back({missing.front(), missing_while_unlocking(missing)});
    return false;
}

LockReport go_on_unlocking(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes) {
    LockReport report;
    FileSystem& disk = locked.beneath();
    rewrite_all_records(disk, folder, RecordsForm::plain);
    report.problems = remove_listed_past_lock(disk, folder);
    const bool all = unlock_files(locked, folder, wishes, report);
    if (report.stopped) return report;
    const bool over = all && all_recorded_are_there(disk, folder, report);
    if (over) {
        disk.remove(folder / lock_file_name);
    } else {
        disk.rename_over(folder / lock_file_name, folder / left_lock_name);
    }
    disk.sync_folder(folder);
    key_ring::forget(folder);
    if (over) forget_lock_mark(disk, folder);
    return report;
}

// From then on the library is being unlocked for good again. False where there is none.
bool take_up_left_lock(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    const bool left = !disk.exists(folder / lock_file_name) && disk.exists(folder / left_lock_name);
    if (!left) return false;
    refuse_left_lock_of_another(disk, folder, keys);
    disk.rename_new(folder / left_lock_name, folder / lock_file_name);
    disk.sync_folder(folder);
    return true;
}

Path whole(const Path& folder) {
    const Path normal = std::filesystem::absolute(folder).lexically_normal();
    return normal.has_filename() ? normal : normal.parent_path();
}

// Wrapped into another library's lock, or an older one of this, a key would lose what it opens.
void refuse_unless_of(const LockFile& lock, const KeysInHand& keys, const Path& folder) {
    if (lock.state == LockState::locked && lock.mark == keys->mark()) return;
    throw StoreError(folder.string() +
                     " was locked or unlocked meanwhile: open it again, and try again. Nothing was "
                     "changed.");
}

// Where it leads, the lock would stay as it was, and open with the passphrase before.
void refuse_lock_that_is_a_link(const Path& lock) {
    std::error_code unknown;
    if (!std::filesystem::is_symlink(lock, unknown)) return;
    throw StoreError(lock.string() + " is a link to " +
                     std::filesystem::read_symlink(lock, unknown).string() +
                     ": put that file itself in its place, and try again. Nothing was changed.");
}

// Of two at once, the second would put back what the first has changed.
void change_lock(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                 const std::function<void(LockFile&)>& change) {
    const FolderLock alone(folder);
    refuse_unless_held(alone);
    LockFile lock = lock_there(disk, folder);
    refuse_unless_of(lock, keys, folder);
    refuse_lock_that_is_a_link(folder / lock_file_name);
    refuse_lock_that_does_not_fit(disk, folder, keys);
    refuse_unless_writable(folder / records_file_name);
    change(lock);
    write_lock(disk, folder, lock);
}

}  // namespace

NewLock new_lock(std::string_view passphrase, const GuessCost& cost) {
    if (const auto reason = reason_against_passphrase(passphrase); !reason.empty()) {
        throw LockError(reason);
    }
    NewLock lock;
    lock.keys = new_library_keys();
    wrap_by_passphrase(lock.file, *lock.keys, passphrase, cost);
    lock.recovery_key = wrap_by_new_recovery_key(lock.file, *lock.keys);
    return lock;
}

LockReport lock_library(FileSystem& disk, const Path& folder, const NewLock& lock,
                        const LockWishes& wishes) {
    const Path place = whole(folder);
    refuse_unless_lockable(disk, place);
    const FolderLock alone(place);
    refuse_unless_held(alone);
    LockedFileSystem locked(disk, place, lock.keys);
    refuse_plain_records(disk, place);
    const std::vector<Path> files = files_to_lock(locked, place).files;
    refuse_long_paths(locked, files);
    refuse_without_room_to_lock(disk, place, files);
    refuse_unless_alone_with(disk, place / records_file_name);
    key_ring::add(place, lock.keys);
    note_lock_mark(disk, place, *lock.keys);
    LockFile file = lock.file;
    file.state = LockState::locking;
    write_lock(disk, place, file);
    return go_on_locking(locked, place, file, wishes);
}

LockReport unlock_for_good(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                           const LockWishes& wishes) {
    const Path place = whole(folder);
    const bool left = take_up_left_lock(disk, place, keys);
    LockFile lock = lock_there(disk, place);
    refuse_second_left_lock(disk, place, lock);
    if (lock.state == LockState::unlocking && !left) {
        return finish_locking(disk, place, keys, wishes);
    }
    if (lock.state == LockState::locking && !left) {
        const LockReport locked = finish_locking(disk, place, keys, wishes);
        if (locked.stopped) return locked;
        lock = lock_there(disk, place);
    }
    const FolderLock alone(place);
    refuse_unless_held(alone);
    if (!left && !holds_half_of(disk, place, keys)) {
        refuse_lock_that_does_not_fit(disk, place, keys);
    }
    refuse_unless_writable(place / records_file_name);
    key_ring::add(place, keys);
    if (lock.state == LockState::locked) {
        refuse_unless_alone_with(disk, place / records_file_name);
    }
    note_lock_mark(disk, place, *keys);
    lock.state = LockState::unlocking;
    write_lock(disk, place, lock);
    LockedFileSystem locked(disk, place, keys);
    return go_on_unlocking(locked, place, wishes);
}

LockReport finish_locking(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                          const LockWishes& wishes) {
    const Path place = whole(folder);
    const LockFile lock = lock_there(disk, place);
    if (lock.state == LockState::locked) return {};
    const FolderLock alone(place);
    refuse_unless_held(alone);
    refuse_records_of_other_keys(disk, place, keys);
    if (lock.state == LockState::unlocking) refuse_second_left_lock(disk, place, lock);
    key_ring::add(place, keys);
    note_lock_mark(disk, place, *keys);
    LockedFileSystem locked(disk, place, keys);
    return lock.state == LockState::locking ? go_on_locking(locked, place, lock, wishes)
                                            : go_on_unlocking(locked, place, wishes);
}

std::vector<Path> left_unlocked(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    const Path place = whole(folder);
    LockedFileSystem locked(disk, place, keys);
    FilesInReach left = files_left_unlocked(locked, place);
    for (const DiskError& error : left.out_of_reach) left.files.push_back(error.file());
    return std::move(left.files);
}

LockReport lock_what_is_left(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                             const LockWishes& wishes) {
    const Path place = whole(folder);
    LockReport report;
    const FolderLock alone(place);
    if (!alone.held()) return report;
    refuse_unless_of(lock_there(disk, place), keys, place);
    LockedFileSystem locked(disk, place, keys);
    lock_left_files(locked, place, wishes, report);
    return report;
}

void change_passphrase(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                       std::string_view passphrase, const GuessCost& cost) {
    if (const auto reason = reason_against_passphrase(passphrase); !reason.empty()) {
        throw LockError(reason);
    }
    change_lock(disk, folder, keys,
                [&](LockFile& lock) { wrap_by_passphrase(lock, *keys, passphrase, cost); });
}

void renew_recovery_key(FileSystem& disk, const Path& folder, const KeysInHand& keys,
                        const std::function<void(const std::string& key)>& print) {
    change_lock(disk, folder, keys,
                [&](LockFile& lock) { print(wrap_by_new_recovery_key(lock, *keys)); });
}

}  // namespace quarterturn
