#include "indexer/store/lock_one_file.h"

#include <cerrno>

#include "indexer/disk/empty_folders.h"
#include "indexer/disk/write_once.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/store/lock_folders.h"

namespace quarterturn {

bool is_at_top(const Path& folder, const Path& file) {
    return file.parent_path() == folder;
}

bool is_locked(FileSystem& disk, const Path& file) try {
    return begin_as_locked(disk.read_front(file, locked_size(0)));
} catch (const DiskError&) {
    return false;
}

std::optional<Bytes> sound_bytes(FileSystem& disk, const Path& file) try {
    return disk.read(file, any_size);
} catch (const DiskError& error) {
    if (!error.damaged()) throw;
    return std::nullopt;
}

std::optional<Bytes> bytes_under_lock(LockedFileSystem& locked, const Path& file) {
    if (auto bytes = sound_bytes(locked, file)) return bytes;
    return opened_but_for_kind(locked.keys(),
                               locked.beneath().read(locked.place_of(file), any_size));
}

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

RefusedFile refused_by(const DiskError& error, std::string_view what_then) {
    return {error.file(), error.what() + std::string(what_then)};
}

void name_out_of_reach(const FilesInReach& found, std::string_view what_then, LockReport& report) {
    for (const DiskError& error : found.out_of_reach) name_left(error, what_then, report);
}

}  // namespace quarterturn
