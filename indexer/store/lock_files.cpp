#include "indexer/store/lock_files.h"

#include <algorithm>

#include "indexer/disk/write_once.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/lock/locked_name.h"
#include "indexer/store/lock_folders.h"
#include "indexer/store/lock_one_file.h"

namespace quarterturn {
namespace {

// Of what the disk refuses alone.
constexpr std::string_view left_beside =
    " Until then, who can read the disk can read it; qturn verify locks it then.";

RefusedFile no_ordinary_file(const Path& file) {
    return {file, file.string() + " is no ordinary file and was left as it is: remove it."};
}

RefusedFile lies_beside_locked(const Path& file) {
    return {file, file.string() +
                      " lies beside the same file as it is locked, and anybody can read it: look "
                      "at it, and move it out of the library."};
}

RefusedFile moved_under_lock(const Path& file) {
    return {file, file.string() +
                      " is locked already, and was moved there by hand: leave it there. qturn "
                      "verify gives it its place again where a record knows it."};
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
        if (locked.exists(file) && sound_bytes(locked, file) != bytes) {
            return lies_beside_locked(file);
        }
        take_over(disk, locked, folder, file, bytes);
    } else if (!begin_as_locked(bytes) && !opened_but_for_kind(locked.keys(), bytes)) {
        replace_file(locked, file, bytes);
    } else if (!sound_bytes(locked, file)) {
        return refused_by(disk_error(EBADMSG, file, Doing::reading), {});
    }
    return std::nullopt;
}

bool is_locked_text(LockedFileSystem& locked, const Path& file) try {
    return is_locked(locked.beneath(), file) || bytes_under_lock(locked, file);
} catch (const DiskError&) {
    return false;
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
    return lies_beside_locked(file);
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
        return is_at_top(folder, file) ? is_locked_text(locked, file) : is_sealed(locked, file);
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

}  // namespace quarterturn
