#include "indexer/backup/backup_place.h"

#include <algorithm>
#include <random>

#include "indexer/backup/foreign_lock.h"
#include "indexer/disk/lies_in.h"
#include "indexer/disk/volume.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/lost_lock.h"

namespace quarterturn {
namespace {

constexpr const char* probe_name = ".quarterturn-probe";

void refuse_unless_apart(Library& library, const Path& to) {
    if (lies_in(to, library.folder())) {
        throw StoreError(to.string() +
                         " lies in the library itself, and would be lost with it: choose a folder "
                         "on another drive.");
    }
    if (lies_in(library.folder(), to)) {
        throw StoreError("The library lies in " + to.string() +
                         ": choose a folder on another drive, or beside it.");
    }
}

void refuse_unless_empty(FileSystem& disk, const Path& to) {
    const auto entries = disk.list(to);
    const auto other = std::ranges::find_if(entries, [](const Path& entry) {
        return !entry.filename().native().starts_with('.') && entry.filename() != lock_file_name;
    });
    if (other == entries.end()) return;
    throw StoreError(to.string() + " holds other things (" + other->filename().string() +
                     "): name a new folder in it, such as " + (to / "Quarterturn backup").string() +
                     ".");
}

// What lies in a backup's folder is locked as the library is, or as little.
void refuse_unless_locked_alike(Library& library, const Path& to,
                                const std::optional<LockFile>& lock) {
    const bool backup_there = lock || library.disk().exists(to / manifest_name);
    if (!backup_there) return;
    if (lock) refuse_lock_on_plain_backup(library.disk(), to);
    if (!library.keys() && lock) {
        throw StoreError("The backup in " + to.string() +
                         " is locked and the library is not: name a new folder for the backup.");
    }
    if (!lock) refuse_lost_lock(library.disk(), to);
    if (library.keys() && !lock) {
        throw StoreError("The backup in " + to.string() +
                         " was made before the library was locked, and can be read by anybody: "
                         "name a new folder, and remove that backup when the new one is made.");
    }
    if (lock && lock->mark != library.keys()->mark()) {
        refuse_another_lock_than(library.disk(), to, library.keys());
        throw StoreError("The backup in " + to.string() +
                         " has another lock than this library, since it is another library's or "
                         "was made before this one was last locked: name a new folder.");
    }
}

// The backup opens with the passphrase and the recovery key that the library has now.
void lock_as_library(Library& library, const Path& to) {
    FileSystem& disk = library.disk();
    const auto lock = read_lock(disk, to);
    refuse_unless_locked_alike(library, to, lock);
    if (!library.keys()) return;
    disk.make_folders(to);
    if (!lock) refuse_unless_empty(disk, to);
    const Path own = library.folder() / lock_file_name;
    const Bytes now = disk.read(own, any_size);
    if (lock && disk.read(to / lock_file_name, any_size) == now) return;
    replace_file(disk, to / lock_file_name, now);
}

// So that a drive that can only be read is told of before anything else.
void refuse_unless_writable(FileSystem& disk, const Path& to) {
    const Path probe = to / probe_name;
    if (disk.exists(probe)) disk.remove(probe);
    disk.write_new(probe, {});
    disk.remove(probe);
}

std::string new_mark() {
    std::random_device random;
    std::string mark;
    constexpr int parts = 4;
    for (int i = 0; i < parts; ++i) {
        std::array<char, 9> text{};
        std::snprintf(text.data(), text.size(), "%08x", random());
        mark += text.data();
    }
    return mark;
}

// Where a drive is not connected, its folder may be an empty one of this computer.
[[noreturn]] void refuse_as_away(const Backup& known) {
    throw StoreError("The backup in " + place_words(known) +
                     " is not there: connect its drive and try again. If it was lost or emptied, "
                     "take it off the list of backups first.");
}

// One that was begun there and never came to its list of files, else a new one.
Backup begun_or_new(Library& library, const Path& to) {
    for (const Backup& known : library.backups().all()) {
        if (known.folder != to) continue;
        if (known.at) refuse_as_away(known);
        return known;
    }
    Backup backup;
    backup.mark = new_mark();
    return backup;
}

Backup known_backup(Library& library, const Path& to, const Manifest& listed) {
    const auto known = library.backups().marked(listed.mark);
    if (!known) {
        throw StoreError(
            to.string() +
            " holds a backup that this library does not know, of another library or one "
            "that was forgotten, and was left as it is: name a new "
            "folder.");
    }
    const auto records = records_in(listed);
    if (!records.empty() && records.back() > known->newest_records) {
        throw StoreError(
            to.string() +
            " holds newer records than this library, made from a copy of it or before this one "
            "was restored; it was left as it is: name a new folder.");
    }
    return *known;
}

}  // namespace

BackupPlace backup_place(Library& library, const Path& to) {
    const Path place = std::filesystem::absolute(to).lexically_normal();
    FileSystem& disk = library.disk();
    refuse_unless_apart(library, place);
    lock_as_library(library, place);
    BackupPlace found{BackupFolder(disk, place), {}, {}};
    if (auto listed = found.folder.manifest()) {
        found.backup = known_backup(library, place, *listed);
        found.listed = std::move(*listed);
    } else {
        found.backup = begun_or_new(library, place);
        found.listed.mark = found.backup.mark;
        found.first = true;
        disk.make_folders(place);
        refuse_unless_empty(disk, place);
    }
    refuse_unless_writable(disk, place);
    found.backup.folder = place;
    found.backup.volume = volume_label(place);
    return found;
}

// Where its lock.json is lost or another library's, backing up says so.
bool was_locked_otherwise(FileSystem& disk, const Path& backup, const KeysInHand& keys) try {
    const auto lock = read_lock(disk, backup);
    const bool alike = lock ? keys && lock->mark == keys->mark() : !keys;
    if (alike || !(lock || disk.exists(backup / manifest_name))) return false;
    lock ? refuse_lock_on_plain_backup(disk, backup) : refuse_lost_lock(disk, backup);
    if (lock && keys) refuse_another_lock_than(disk, backup, keys);
    return true;
} catch (const std::runtime_error&) {
    return false;
}

}  // namespace quarterturn
