#include "indexer/store/lock_folders.h"

#include <algorithm>
#include <cerrno>

#include "indexer/lock/locked_name.h"

namespace quarterturn {
namespace {

void drop_plain(LockedFileSystem& locked, const Path& folder, const Path& below,
                LockReport& report) {
    FileSystem& disk = locked.beneath();
    for (const Path& entry : disk.list(folder / below)) {
        const Path path = below / entry.filename();
        if (is_locked_name(locked, path)) continue;
        try {
            if (!disk.is_folder(entry)) continue;
            drop_plain(locked, folder, path, report);
            if (!below.empty() && disk.list(entry).empty()) disk.remove_empty_folder(entry);
        } catch (const DiskError& error) {
            name_left(error, left_readable, report);
        }
    }
}

// Under a locked name: who looks for it by its plain name finds nothing, or another folder.
void name_folder_that_stays(LockedFileSystem& locked, const Path& folder, const DiskError& error,
                            LockReport& report) {
    const Path place = locked.place_of(folder);
    RefusedFile problem{error.file(), error.what()};
    if (locked.beneath().exists(place)) {
        const std::vector<Path> in_it = locked.beneath().list(place);
        problem = {
            place,
            place.string() + " is a folder of the library under its locked name, and stays" +
                (in_it.empty() ? "." : ", since " + in_it.front().string() + " lies in it.")};
    }
    problem.reason += " Move what you need out of it, and remove the folder.";
    report.problems.push_back(std::move(problem));
}

// What is in the way is no file of the library.
void drop_locked_folder(LockedFileSystem& locked, const Path& folder, LockReport& report) try {
    locked.remove_empty_folder(folder);
} catch (const DiskError& error) {
    if (error.error_number() != ENOTEMPTY) throw;
    name_folder_that_stays(locked, folder, error, report);
}

bool drop_locked(LockedFileSystem& locked, const Path& folder, const Path& top,
                 LockReport& report) {
    bool all = true;
    const std::vector<Path> entries = locked.list(folder);
    locked.drop_empty_fronts(folder);
    for (const Path& entry : entries) {
        try {
            if (!locked.is_folder(entry)) continue;
            all = drop_locked(locked, entry, top, report) && all;
            if (entry.parent_path() == top || !locked.list(entry).empty()) continue;
            drop_locked_folder(locked, entry, report);
        } catch (const DiskError& error) {
            name_left(error, stays_locked, report);
            all = false;
        }
    }
    return all;
}

}  // namespace

bool is_locked_name(LockedFileSystem& locked, const Path& below) {
    const Path folder = below.parent_path();
    const std::string name = below.filename().native();
    return !folder.empty() && (is_front_of_locked_name(name) ||
                               unlock_name(locked.keys(), folder.generic_string(), name));
}

void name_left(const DiskError& error, std::string_view what_then, LockReport& report) {
    RefusedFile problem{error.file(), error.what() + std::string(what_then)};
    if (std::ranges::find(report.problems, problem) != report.problems.end()) return;
    report.problems.push_back(std::move(problem));
}

void drop_plain_folders(LockedFileSystem& locked, const Path& folder, LockReport& report) {
    drop_plain(locked, folder, {}, report);
}

bool drop_locked_folders(LockedFileSystem& locked, const Path& folder, LockReport& report) {
    return drop_locked(locked, folder, folder, report);
}

}  // namespace quarterturn
