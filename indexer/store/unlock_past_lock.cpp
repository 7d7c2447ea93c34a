#include "indexer/store/unlock_past_lock.h"

#include "indexer/disk/empty_folders.h"
#include "indexer/disk/write_once.h"
#include "indexer/store/past_lock.h"

namespace quarterturn {
namespace {

constexpr std::string_view key_of_moved_is_kept =
    " It was moved by hand, and stays locked; its key is kept in lock.left.json: leave that there. "
    "When it can be read again, qturn lock remove goes on with it.";

void settle_move(FileSystem& disk, const Path& folder, const PastLock& file) {
    disk.sync_folder(file.belongs.parent_path());
    disk.sync_folder(file.lies.parent_path());
    drop_empty_folders(disk, folder, file.lies.lexically_relative(folder).parent_path());
}

// Empty where it lies unlocked now.
std::string unlock_moved(LockedFileSystem& locked, const Path& folder, const PastLock& file) {
    FileSystem& disk = locked.beneath();
    const Bytes bytes = bytes_sealed(locked, file.lies);
    if (file.belongs == file.lies) {
        replace_file(disk, file.lies, bytes);
        return {};
    }
    disk.make_folders(file.belongs.parent_path());
    if (!disk.exists(file.belongs)) {
        write_once(disk, file.belongs, bytes);
    } else if (disk.read(file.belongs, any_size) != bytes) {
        return file.lies.string() + " could not be unlocked, since another file lies in " +
               file.belongs.string() + ": move one of them elsewhere.";
    }
    disk.remove(file.lies);
    settle_move(disk, folder, file);
    return {};
}

std::string was_unlocked(const Path& file) {
    return file.string() +
           " had been moved there by hand while the library was locked, and is unlocked now: qturn "
           "verify gives it its place again where a record knows it.";
}

RefusedFile stays_where_moved(const DiskError& error) {
    return {error.file(), error.what() + std::string(key_of_moved_is_kept)};
}

bool unlock_sealed(LockedFileSystem& locked, const Path& folder, const PastLock& file,
                   LockReport& report) try {
    const std::string wrong = unlock_moved(locked, folder, file);
    if (wrong.empty()) {
        ++report.files;
        report.problems.push_back({file.belongs, was_unlocked(file.belongs)});
    } else {
        report.problems.push_back({file.lies, wrong + std::string(key_of_moved_is_kept)});
    }
    return wrong.empty();
} catch (const DiskError& error) {
    report.problems.push_back(stays_where_moved(error));
    return false;
}

void lay_into_plain_folder(FileSystem& disk, const Path& folder, const PastLock& file,
                           LockReport& report) try {
    if (file.belongs == file.lies) return;
    disk.make_folders(file.belongs.parent_path());
    disk.rename_new(file.lies, file.belongs);
    settle_move(disk, folder, file);
} catch (const DiskError&) {
    report.problems.push_back(
        {file.lies, file.lies.string() + " is no file of the library, and could not be moved to " +
                        file.belongs.string() + ": it was left as it is. Move it yourself."});
}

}  // namespace

bool unlock_past_lock(LockedFileSystem& locked, const Path& folder, LockReport& report) {
    const FoundPastLock found = files_past_lock(locked, folder);
    bool all = found.out_of_reach.empty();
    for (const DiskError& error : found.out_of_reach) {
        report.problems.push_back(stays_where_moved(error));
    }
    for (const PastLock& file : found.files) {
        if (file.sealed) {
            all = unlock_sealed(locked, folder, file, report) && all;
        } else {
            lay_into_plain_folder(locked.beneath(), folder, file, report);
        }
    }
    return all;
}

}  // namespace quarterturn
