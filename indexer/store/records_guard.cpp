#include "indexer/store/records_guard.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <sys/stat.h>

#include <algorithm>
#include <array>
#include <optional>

#include "indexer/disk/folder_lock.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_watch.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_mark_bytes = 64;
// What the library remembers in place of a file's number.
constexpr std::string_view was_overwritten = "written over";

Path mark_of(const Path& library) {
    return library / (records_file_name + std::string(ending_of_mark));
}

// By its number on the disk, which stays when the file is renamed or written.
std::string which_file(const Path& library) {
    struct stat there {};
    if (::stat((library / records_file_name).c_str(), &there) != 0) return {};
    return std::to_string(there.st_ino);
}

std::string remembered(const Path& library, FileSystem& disk) try {
    const Path mark = mark_of(library);
    if (!disk.exists(mark)) return {};
    const Bytes bytes = disk.read(mark, most_mark_bytes);
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
} catch (const DiskError&) {
    return {};
}

Path changes_of(const Path& records) {
    return Path(records.native() + "-wal");
}

bool any_wait(const Path& records, FileSystem& disk) {
    const Path changes = changes_of(records);
    return disk.exists(changes) && disk.state(changes).bytes > 0;
}

// This process may have the records open: past SQLite, only other files are read.
struct Both {
    Bytes records;
    Bytes changes;
};

Both both_of(const Path& records, FileSystem& disk) {
    return {raw_records(records),
            any_wait(records, disk) ? disk.read(changes_of(records), any_size) : Bytes{}};
}

void write_both(const Both& both, const Path& to, FileSystem& disk) {
    disk.write_new(to, both.records);
    disk.sync_file(to);
    if (both.changes.empty()) return;
    disk.write_new(changes_of(to), both.changes);
    disk.sync_file(changes_of(to));
}

bool holds_bytes(const Path& file, const Bytes& bytes, FileSystem& disk) {
    return disk.exists(file) && disk.read(file, any_size) == bytes;
}

// The same as it was refused before is kept once.
std::optional<Path> kept_before(const Path& library, const Both& both, FileSystem& disk) {
    for (const Path& kept : disk.list(library)) {
        const std::string name = kept.filename().string();
        if (name.find(".kept-") == name.npos || name.ends_with("-wal")) continue;
        if (!holds_bytes(kept, both.records, disk)) continue;
        if (both.changes.empty() || holds_bytes(changes_of(kept), both.changes, disk)) return kept;
    }
    return std::nullopt;
}

Path keep_copies(const Path& records, FileSystem& disk) {
    const Path library = records.parent_path();
    const Both both = both_of(records, disk);
    if (const auto before = kept_before(library, both, disk)) return *before;
    Path kept = free_place_for_records(library);
    write_both(both, kept, disk);
    disk.sync_folder(library);
    return kept;
}

constexpr std::array trial_endings{"", "-wal", "-shm"};

// Also what a trial left that was interrupted.
void clear_trial(const Path& trial, FileSystem& disk) {
    for (const char* ending : trial_endings) {
        if (const Path part(trial.native() + ending); disk.exists(part)) disk.remove(part);
    }
}

bool any_of_trial(const Path& trial, FileSystem& disk) {
    return std::ranges::any_of(trial_endings, [&](const char* ending) {
        return disk.exists(Path(trial.native() + ending));
    });
}

// Tried on copies, which SQLite changes.
bool go_together(const Path& records, const Path& trial, FileSystem& disk) {
    write_both(both_of(records, disk), trial, disk);
    bool sound = false;
    try {
        sound = sound_copy(trial);
    } catch (const StoreError&) {
        sound = false;
    }
    clear_trial(trial, disk);
    return sound;
}

}  // namespace

void refuse_changes_of_another_file(const Path& library, FileSystem& disk) {
    const Path records = library / records_file_name;
    const Path trial(records.native() + ".trial");
    const std::string before = remembered(library, disk);
    if (before == was_overwritten && any_wait(records, disk)) {
        throw StoreError(overwritten_sentence(records));
    }
    const bool doubted =
        !before.empty() && before != which_file(library) && any_wait(records, disk);
    if (!doubted && !any_of_trial(trial, disk)) return;
    const FolderLock alone(library);  // another program may be in the middle of the same trial
    if (alone.held()) clear_trial(trial, disk);
    if (!doubted) return;
    if (!alone.held()) {
        throw StoreError("Another window or command is opening the library in " + library.string() +
                         ": try again in a moment. Nothing was changed.");
    }
    if (go_together(records, trial, disk)) return;
    const Path kept = keep_copies(records, disk);
    throw StoreError(
        records.string() +
        " was put in the place of another file, as services do that copy folders, and what was "
        "last saved here does not belong to it. Nothing was changed, and copies of both are kept "
        "in " +
        kept.string() +
        ". Close every window of the program. To go on with the new file, move "
        "records.sqlite-wal and records.sqlite-shm out of the folder; to go back, put a copy that "
        "was kept without "
        "a -wal in its place, or make the library again with qturn restore. Keep the library in a "
        "folder that no such service copies.");
}

void keep_overwritten(const Path& records, FileSystem& disk) {
    replace_file(disk, mark_of(records.parent_path()), std::as_bytes(std::span(was_overwritten)));
    keep_copies(records, disk);
}

std::string overwritten_sentence(const Path& records) {
    return records.string() +
           " was written over by another file while the library was open, as services do that "
           "copy folders. Nothing was changed since; copies of that file and of what was last "
           "saved here are kept beside it, in files whose names begin with records.sqlite.kept. "
           "Close every window of the program. To go back, make the library again from the newest "
           "backup in a new place, with qturn restore or on the window's first page; to go on with "
           "the other file, move records.sqlite-wal and records.sqlite-shm out of the folder. Keep "
           "the library in a folder that no such service copies.";
}

void remember_records_file(const Path& library, FileSystem& disk) try {
    const std::string now = which_file(library);
    if (now.empty() || now == remembered(library, disk)) return;
    replace_file(disk, mark_of(library), std::as_bytes(std::span(now)));
} catch (const DiskError&) {
    // It is only a precaution.
}

}  // namespace quarterturn
