#include "indexer/store/lock_files.h"

#include "indexer/disk/empty_folders.h"
#include "indexer/disk/write_once.h"
#include "indexer/lock/locked_name.h"

namespace quarterturn {
namespace {

bool is_at_top(const Path& folder, const Path& file) {
    return file.parent_path() == folder;
}

bool is_locked_name(LockedFileSystem& locked, const Path& below) {
    const Path folder = below.parent_path();
    const std::string name = below.filename().native();
    return !folder.empty() && (is_front_of_locked_name(name) ||
                               unlock_name(locked.keys(), folder.generic_string(), name));
}

void gather_plain(LockedFileSystem& locked, const Path& folder, const Path& below,
                  std::vector<Path>& files) {
    FileSystem& disk = locked.beneath();
    for (const Path& entry : disk.list(folder / below)) {
        const Path path = below / entry.filename();
        if (stays_as_it_is(path) || is_locked_name(locked, path)) continue;
        if (disk.is_folder(entry)) {
            gather_plain(locked, folder, path, files);
        } else {
            files.push_back(entry);
        }
    }
}

// Folders that held no file have names too.
void drop_plain_folders(LockedFileSystem& locked, const Path& folder, const Path& below) {
    FileSystem& disk = locked.beneath();
    for (const Path& entry : disk.list(folder / below)) {
        const Path path = below / entry.filename();
        if (!disk.is_folder(entry) || is_locked_name(locked, path)) continue;
        drop_plain_folders(locked, folder, path);
        if (!below.empty() && disk.list(entry).empty()) disk.remove_empty_folder(entry);
    }
}

void drop_locked_folders(LockedFileSystem& locked, const Path& folder, const Path& top) {
    locked.drop_empty_fronts(folder);
    for (const Path& entry : locked.list(folder)) {
        if (!locked.is_folder(entry)) continue;
        drop_locked_folders(locked, entry, top);
        if (!is_at_top(top, entry) && locked.list(entry).empty()) locked.remove_empty_folder(entry);
    }
}

std::optional<Bytes> sound_bytes(FileSystem& disk, const Path& file) try {
    return disk.read(file, any_size);
} catch (const DiskError& error) {
    if (!error.damaged()) throw;
    return std::nullopt;
}

// Writes the file on one disk as it is on the other, and only then removes it there. What lies
// there already is from before an interruption.
void take_over(FileSystem& from, FileSystem& to, const Path& folder, const Path& file,
               const Bytes& bytes) {
    to.make_folders(file.parent_path());
    const bool there = to.exists(file);
    if (there && sound_bytes(to, file) != bytes) {
        to.remove(file);
        write_once(to, file, bytes);
    } else if (!there) {
        write_once(to, file, bytes);
    }
    from.remove(file);
    from.sync_folder(file.parent_path());
    drop_empty_folders(from, folder, file.lexically_relative(folder).parent_path());
}

void lock_file_at(LockedFileSystem& locked, const Path& folder, const Path& file) {
    FileSystem& disk = locked.beneath();
    const Bytes bytes = disk.read(file, any_size);
    if (!is_at_top(folder, file)) return take_over(disk, locked, folder, file, bytes);
    if (!sound_bytes(locked, file)) replace_file(locked, file, bytes);
}

// False when the file is damaged: it then lies under its own name as it is, for the next check of
// the library to find.
bool unlock_file_at(LockedFileSystem& locked, const Path& folder, const Path& file) {
    FileSystem& disk = locked.beneath();
    const auto bytes = sound_bytes(locked, file);
    if (is_at_top(folder, file)) {
        if (bytes) replace_file(disk, file, *bytes);  // else it was unlocked before
        return true;
    }
    if (bytes) {
        take_over(locked, disk, folder, file, *bytes);
        return true;
    }
    disk.make_folders(file.parent_path());
    disk.rename_over(locked.place_of(file), file);
    disk.sync_folder(file.parent_path());
    return false;  // the front of a long name goes with the folders
}

template <class Convert>
void convert_each(const std::vector<Path>& files, const LockWishes& wishes, LockReport& report,
                  Convert convert) {
    for (const Path& file : files) {
        if (wishes.stop.stop_requested()) {
            report.stopped = true;
            return;
        }
        convert(file);
        ++report.files;
        if (wishes.progress) wishes.progress(report.files, std::ssize(files));
    }
}

}  // namespace

std::vector<Path> files_to_lock(LockedFileSystem& locked, const Path& folder) {
    std::vector<Path> files;
    gather_plain(locked, folder, {}, files);
    return files;
}

std::vector<Path> files_to_unlock(LockedFileSystem& locked, const Path& folder) {
    std::vector<Path> files = files_below(locked, folder);
    std::erase_if(
        files, [&](const Path& file) { return stays_as_it_is(file.lexically_relative(folder)); });
    return files;
}

void lock_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                LockReport& report) {
    convert_each(files_to_lock(locked, folder), wishes, report, [&](const Path& file) {
        if (!locked.beneath().state(file).regular) {
            report.problems.push_back(file.string() +
                                      " is no ordinary file and was left as it is: remove it.");
            return;
        }
        lock_file_at(locked, folder, file);
    });
    if (!report.stopped) drop_plain_folders(locked, folder, {});
}

void unlock_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                  LockReport& report) {
    convert_each(files_to_unlock(locked, folder), wishes, report, [&](const Path& file) {
        if (unlock_file_at(locked, folder, file)) return;
        report.problems.push_back(file.string() +
                                  " is damaged: check the library (qturn verify), which puts it "
                                  "back from a backup where one holds it.");
    });
    if (!report.stopped) drop_locked_folders(locked, folder, folder);
}

}  // namespace quarterturn
