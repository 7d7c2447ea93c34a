#include "indexer/store/lock_files.h"

#include <algorithm>
#include <cerrno>

#include "indexer/disk/empty_folders.h"
#include "indexer/disk/write_once.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/lock/locked_name.h"
#include "indexer/store/lock_folders.h"
#include "indexer/store/past_lock.h"
#include "indexer/store/unlock_past_lock.h"

namespace quarterturn {
namespace {

// Of what the disk refuses alone.
constexpr std::string_view left_beside =
    " Until then, who can read the disk can read it; qturn verify locks it then.";
constexpr std::string_view left_with_its_key =
    " What is locked of it stays, and its key is kept in lock.left.json: leave that there. qturn "
    "lock remove goes on with it then.";

bool is_at_top(const Path& folder, const Path& file) {
    return file.parent_path() == folder;
}

void name_out_of_reach(const FilesInReach& found, std::string_view what_then, LockReport& report) {
    for (const DiskError& error : found.out_of_reach) name_left(error, what_then, report);
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
    try {
        drop_empty_folders(from, folder, file.lexically_relative(folder).parent_path());
    } catch (const DiskError& error) {
        if (error.error_number() != ENOTEMPTY) throw;  // named when all folders are dropped
    }
}

RefusedFile no_ordinary_file(const Path& file) {
    return {file, file.string() + " is no ordinary file and was left as it is: remove it."};
}

RefusedFile moved_under_lock(const Path& file) {
    return {file, file.string() +
                      " is locked already, and was moved there by hand: leave it there. qturn "
                      "verify gives it its place again where a record knows it."};
}

RefusedFile refused_by(const DiskError& error, std::string_view what_then) {
    return {error.file(), error.what() + std::string(what_then)};
}

// Answers what is wrong when the file was left as it is, else nothing.
std::optional<RefusedFile> lock_file_at(LockedFileSystem& locked, const Path& folder,
                                        const Path& file) {
    FileSystem& disk = locked.beneath();
    Bytes bytes;
    try {
        if (!disk.state(file).regular) return no_ordinary_file(file);
        bytes = disk.read(file, any_size);
    } catch (const DiskError& error) {
        if (std::filesystem::is_symlink(file)) return no_ordinary_file(file);
        return refused_by(error, left_readable);
    }
    if (!is_at_top(folder, file)) {
        if (is_sealed(locked.keys(), bytes)) return moved_under_lock(file);
        take_over(disk, locked, folder, file, bytes);
    } else if (!begin_as_locked(bytes)) {
        replace_file(locked, file, bytes);
    } else if (!sound_bytes(locked, file)) {
        return refused_by(disk_error(EBADMSG, file, Doing::reading), {});
    }
    return std::nullopt;
}

bool is_locked(FileSystem& disk, const Path& file) try {
    return begin_as_locked(disk.read_front(file, locked_size(0)));
} catch (const DiskError&) {
    return false;
}

// As when a check of the library put it back from a backup, after the lock was taken off.
bool was_put_back(LockedFileSystem& locked, const Path& file) {
    const auto plain = state_if_there(locked.beneath(), file);
    const std::int64_t sealed = locked.beneath().state(locked.place_of(file)).bytes;
    return plain && unlocked_size(sealed) == plain->bytes;
}

// One that is damaged, or that the disk does not give, stays locked, and so does its key.
std::optional<RefusedFile> unlock_file_at(LockedFileSystem& locked, const Path& folder,
                                          const Path& file, const LockWishes& wishes,
                                          bool& any_stays) {
    std::optional<Bytes> bytes;
    try {
        bytes = sound_bytes(locked, file);
    } catch (const DiskError& error) {
        any_stays = true;
        return refused_by(error, stays_locked);
    }
    const bool top = is_at_top(folder, file);
    if (top && !bytes && !is_locked(locked.beneath(), file)) return std::nullopt;  // it is unlocked
    if (!top && !bytes && was_put_back(locked, file)) {
        locked.remove(file);
        return std::nullopt;
    }
    if (!bytes && wishes.whole_copy) bytes = wishes.whole_copy(file);
    if (!bytes) {
        any_stays = true;
        return RefusedFile{file, file.string() + " is damaged." + std::string(stays_locked)};
    }
    if (top) {
        replace_file(locked.beneath(), file, *bytes);
    } else {
        take_over(locked, locked.beneath(), folder, file, *bytes);
    }
    return std::nullopt;
}

// As when it was out of reach, and a backup gave it back under the lock meanwhile.
bool is_what_is_locked(LockedFileSystem& locked, const Path& file) try {
    return locked.beneath().read(file, any_size) == locked.read(file, any_size);
} catch (const DiskError&) {
    return false;
}

// Of a library that is locked, what lies there in a locked file's place may be anything.
std::optional<RefusedFile> lock_left_file(LockedFileSystem& locked, const Path& folder,
                                          const Path& file) {
    if (is_at_top(folder, file) || !locked.exists(file) || is_what_is_locked(locked, file)) {
        return lock_file_at(locked, folder, file);
    }
    return RefusedFile{file, file.string() +
                                 " lies beside the same file as it is locked, and anybody can "
                                 "read it: look at it, and move it out of the library."};
}

// One that may not be changed keeps no other from it. False where there is such a one.
template <class Convert>
bool convert_each(const std::vector<Path>& files, const LockWishes& wishes, LockReport& report,
                  std::string_view not_allowed_then, Convert convert) {
    bool all_allowed = true;
    for (const Path& file : files) {
        if (wishes.stop.stop_requested()) {
            report.stopped = true;
            return false;
        }
        std::optional<RefusedFile> problem;
        try {
            problem = convert(file);
        } catch (const DiskError& error) {
            if (!error.not_allowed()) throw;
            problem = refused_by(error, not_allowed_then);
            all_allowed = false;
        }
        problem ? report.problems.push_back(std::move(*problem)) : void(++report.files);
        if (wishes.progress) {
            wishes.progress(report.files + std::ssize(report.problems), std::ssize(files));
        }
    }
    return all_allowed;
}

template <class Lock>
void lock_each(LockedFileSystem& locked, const Path& folder, const FilesInReach& found,
               const LockWishes& wishes, LockReport& report, Lock lock) {
    convert_each(found.files, wishes, report, left_beside,
                 [&](const Path& file) { return lock(locked, folder, file); });
    if (report.stopped) return;
    name_out_of_reach(found, left_readable, report);
    drop_plain_folders(locked, folder, report);
}

}  // namespace

FilesInReach files_to_lock(LockedFileSystem& locked, const Path& folder) {
    return files_in_reach(locked.beneath(), folder, [&](const Path& entry) {
        const Path below = entry.lexically_relative(folder);
        return stays_as_it_is(below) || is_locked_name(locked, below);
    });
}

FilesInReach files_left_unlocked(LockedFileSystem& locked, const Path& folder) {
    FilesInReach found = files_to_lock(locked, folder);
    std::erase_if(found.files, [&](const Path& file) {
        return is_at_top(folder, file) ? is_locked(locked.beneath(), file)
                                       : is_sealed(locked, file);
    });
    return found;
}

FilesInReach files_to_unlock(LockedFileSystem& locked, const Path& folder) {
    return files_in_reach(locked, folder, [&](const Path& entry) {
        return stays_as_it_is(entry.lexically_relative(folder));
    });
}

void lock_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                LockReport& report) {
    lock_each(locked, folder, files_to_lock(locked, folder), wishes, report, lock_file_at);
}

void lock_left_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                     LockReport& report) {
    lock_each(locked, folder, files_left_unlocked(locked, folder), wishes, report, lock_left_file);
}

bool unlock_files(LockedFileSystem& locked, const Path& folder, const LockWishes& wishes,
                  LockReport& report) {
    const bool all_past_lock = unlock_past_lock(locked, folder, report);
    const FilesInReach found = files_to_unlock(locked, folder);
    bool any_stays = !all_past_lock || !found.out_of_reach.empty();
    const bool all_allowed = convert_each(
        found.files, wishes, report, left_with_its_key,
        [&](const Path& file) { return unlock_file_at(locked, folder, file, wishes, any_stays); });
    if (report.stopped) return false;
    name_out_of_reach(found, stays_locked, report);
    return drop_locked_folders(locked, folder, report) && !any_stays && all_allowed;
}

}  // namespace quarterturn
