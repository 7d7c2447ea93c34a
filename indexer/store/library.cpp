#include "indexer/store/library.h"

#include "indexer/lock/key_ring.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/lock_fits.h"
#include "indexer/store/lost_lock.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_guard.h"
#include "indexer/store/records_unwritable.h"
#include "indexer/store/store_error.h"

namespace quarterturn {
namespace {

constexpr const char* records_name = "records.sqlite";
constexpr const char* photos_name = "photos";
constexpr const char* cache_name = "cache";
constexpr const char* incoming_name = "incoming";

bool is_left_from_making(FileSystem& disk, const Path& entry) {
    const std::string name = entry.filename().string();
    if (name.starts_with(std::string(records_name) + ".new")) return true;
    const bool ours = name == photos_name || name == cache_name || name == incoming_name;
    return ours && disk.list(entry).empty();
}

// A library whose making was interrupted counts as nothing.
void refuse_unless_empty(FileSystem& disk, const Path& folder) {
    if (!disk.exists(folder)) return;
    if (disk.exists(folder / records_name)) {
        throw StoreError(folder.string() +
                         " is a library already: open it, or name another folder.");
    }
    for (const Path& entry : disk.list(folder)) {
        if (!is_left_from_making(disk, entry)) {
            throw StoreError(folder.string() + " is not empty (" + entry.filename().string() +
                             " lies in it): name a new or empty folder for the library.");
        }
    }
}

bool was_a_library(FileSystem& disk, const Path& folder) {
    const Path photos = folder / photos_name;
    return disk.is_folder(photos) && disk.is_folder(folder / incoming_name) &&
           !disk.list(photos).empty();
}

void refuse_unless_library(FileSystem& disk, const Path& folder) {
    if (!disk.exists(folder)) {
        throw StoreError("There is no folder " + folder.string() +
                         ": name the folder of a library, or make a new library there.");
    }
    if (disk.exists(folder / records_name)) return;
    if (disk.is_folder(folder / restoring_folder_name)) {
        throw StoreError("Making a library in " + folder.string() +
                         " again from a backup was interrupted: restore it into this folder once "
                         "more, as before, and it goes on; or remove this folder, and restore it "
                         "into a new one.");
    }
    if (was_a_library(disk, folder)) {
        throw StoreError("The records of the library in " + folder.string() + " (" + records_name +
                         ") are gone: look for that file and put it back, or " +
                         restore_elsewhere + '.');
    }
    throw StoreError(folder.string() + " is no library (it holds no " + records_name +
                     "): name the folder of a library, or make a new one.");
}

// Null when there is no lock.
KeysInHand keys_of_library(FileSystem& disk, const Path& folder) try {
    const auto lock = read_lock(disk, folder);
    if (!lock) {
        key_ring::forget(folder);
        return nullptr;
    }
    if (lock->state != LockState::locked) {
        refuse_lock_on_plain_library(disk, folder, *lock);
        throw LibraryLocked(folder.string() +
                            " is being locked or unlocked for good, which was interrupted: give "
                            "its passphrase to go on with it.");
    }
    KeysInHand keys = key_ring::with_mark(lock->mark);
    if (keys == nullptr) {
        refuse_lock_on_plain_library(disk, folder, *lock);
        throw LibraryLocked(folder.string() + " is locked: give its passphrase to open it.");
    }
    key_ring::add(folder, keys);
    return keys;
} catch (const LockError& error) {
    throw StoreError(error.what());
}

// Somebody may have locked or unlocked it while it was being opened.
void refuse_if_lock_changed(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    if (keys_of_library(disk, folder) == keys) return;
    throw LibraryLocked(folder.string() + " was locked or unlocked just now: open it again.");
}

// Null when there is no lock, and none is lost.
KeysInHand keys_that_fit(FileSystem& disk, const Path& folder) {
    KeysInHand keys = keys_of_library(disk, folder);
    if (!std::filesystem::exists(folder / records_name)) return keys;
    try {
        // What is being restored lies in a folder of its own, under the lock of the one around it.
        refuse_lock_that_does_not_fit(disk, folder, key_ring::of_file(folder / records_name));
    } catch (const StoreError&) {
        refuse_if_lock_changed(disk, folder, keys);
        throw;
    }
    return keys;
}

std::unique_ptr<Database> opened_records(const Path& folder, FileSystem& disk, Opening opening) {
    if (opening == Opening::to_change) {
        refuse_unless_writable(folder / records_name);
        refuse_changes_of_another_file(folder, disk);
    }
    try {
        return std::make_unique<Database>(folder / records_name, disk, opening);
    } catch (const RecordsUnwritable&) {
        throw;
    } catch (const StoreError&) {
        try {
            refuse_lost_lock(disk, folder);
        } catch (const DiskError&) {
            // The failure before this one is the one to tell of.
        }
        throw;
    }
}

}  // namespace

Library::Library(Path folder, FileSystem& disk, Opening opening)
    : folder_(std::move(folder)),
      disk_(&disk),
      keys_(keys_that_fit(disk, folder_)),
      locked_(keys_ ? std::make_unique<LockedFileSystem>(disk, folder_, keys_) : nullptr),
      database_(opened_records(folder_, disk, opening)) {
    refuse_if_lock_changed(disk, folder_, keys_);
}

void Library::settle_in() {
    disk().make_folders(cache_folder());
    disk().make_folders(incoming_folder());
    remember_records_file(folder_, *disk_);
}

Library Library::open_or_look(const Path& folder, FileSystem& disk) {
    try {
        return open(folder, disk);
    } catch (const NoRoomForRecords&) {
        const Path place = std::filesystem::absolute(folder);
        Library library{place, disk, Opening::to_look_at_copy};
        library.why_only_to_look_ = no_room_sentence(place);
        return library;
    } catch (const RecordsUnwritable& reason) {
        Library library = open_to_look(folder, disk);
        library.why_only_to_look_ = reason.what();
        return library;
    }
}

Library Library::open_again(const Path& folder, FileSystem& disk) {
    if (disk.exists(folder / records_name)) return open_or_look(folder, disk);
    throw StoreError(
        folder.string() +
        " is not there any longer: connect the drive that it lies on, and do this once "
        "more; if the folder was moved or renamed, open it where it is now. What was "
        "saved is kept.");
}

std::string Library::older_records() const {
    return database_->older_than_known() ? older_sentence(folder_ / records_name) : std::string{};
}

Library Library::create(const Path& folder, FileSystem& disk) {
    const Path place = std::filesystem::absolute(folder);
    refuse_unless_empty(disk, place);
    disk.make_folders(place / photos_name);
    Library library{place, disk, Opening::to_change};
    library.settle_in();
    return library;
}

Library Library::open(const Path& folder, FileSystem& disk) {
    const Path place = std::filesystem::absolute(folder);
    refuse_unless_library(disk, place);
    Library library{place, disk, Opening::to_change};
    try {
        library.settle_in();
    } catch (const DiskError& error) {
        if (error.disk_full()) throw NoRoomForRecords(error.what());
        throw;
    }
    try {
        library.history().let_old_edits_go();
    } catch (const StoreError&) {
        // Another program writes, or the disk is full: they go the next time.
    }
    return library;
}

Library Library::open_to_look(const Path& folder, FileSystem& disk) {
    const Path place = std::filesystem::absolute(folder);
    refuse_unless_library(disk, place);
    return {place, disk, Opening::to_look};
}

}  // namespace quarterturn
