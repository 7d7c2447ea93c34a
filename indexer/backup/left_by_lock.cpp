#include "indexer/backup/left_by_lock.h"

#include <algorithm>

#include "indexer/disk/lines_by_reason.h"
#include "indexer/lock/lock_file.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/lock/locked_name.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/listed_past_lock.h"
#include "indexer/store/lock_leftovers.h"
#include "indexer/store/lock_library.h"
#include "indexer/store/past_lock.h"

namespace quarterturn {
namespace {

FileSystem& beneath(Library& library) {
    return past_lock_of(library).beneath();
}

// What cannot be read may be.
bool holds_what_is_locked(FileSystem& disk, const Path& file) try {
    return disk.is_folder(file) || begin_as_locked(disk.read_front(file, locked_size(0)));
} catch (const DiskError&) {
    return true;
}

std::vector<Path> lying_open(Library& library) {
    return left_unlocked(beneath(library), library.folder(), library.keys());
}

}  // namespace

LockedFileSystem& past_lock_of(Library& library) {
    return dynamic_cast<LockedFileSystem&>(library.disk());
}

std::vector<std::string> moved_past_lock(Library& library) {
    if (!library.keys()) return {};
    const std::vector<std::string> to_go = ErasureTable(library.database()).files_left();
    std::vector<std::string> paths;
    for (const Path& file : sealed_past_lock(past_lock_of(library), library.folder())) {
        const Path path = file.lexically_relative(library.folder());
        const bool goes = std::ranges::find(to_go, listed_past_lock(path)) != to_go.end();
        if (!goes) paths.push_back(path.generic_string());
    }
    return paths;
}

std::string lies_past_lock(const std::string& path) {
    return path +
           " is locked with this library's key, was moved there by hand, and is no file that the "
           "records miss: it may be a photo of yours. Keep it; qturn lock remove unlocks it where "
           "it lies.";
}

std::vector<std::string> lock_what_lies_open_in(Library& library, const std::stop_token& stop) {
    const std::vector<Path> open = lying_open(library);
    if (open.empty()) return {};
    LockWishes wishes;
    wishes.stop = stop;
    std::vector<std::string> sentences = reasons_of(
        lock_what_is_left(beneath(library), library.folder(), library.keys(), wishes).problems);
    const std::vector<Path> stays = lying_open(library);
    for (const Path& file : open) {
        if (std::ranges::find(stays, file) != stays.end()) continue;
        sentences.push_back(file.string() +
                            " was not locked, so that who could read the disk could read it; it is "
                            "locked now.");
    }
    return sentences;
}

std::vector<std::string> what_lies_open_in(Library& library) {
    std::vector<std::string> sentences;
    for (const Path& file : lying_open(library)) {
        sentences.push_back(file.string() +
                            " is not locked: who can read the disk can read it. qturn verify locks "
                            "it unless it is to look only.");
    }
    return sentences;
}

bool is_still_locked(const std::string& path) {
    return std::ranges::any_of(Path(path), [](const Path& part) {
        return looks_locked(part.native()) || is_front_of_locked_name(part.native());
    });
}

std::string still_locked(Library& library, const std::string& path) {
    const bool in_place =
        library.disk().exists(library.folder() / left_lock_name) && lies_where_locked(path);
    if (!in_place && !holds_what_is_locked(library.disk(), library.folder() / path)) {
        return path +
               " is in no record, and only its name is still as the lock gave it: open it, give it "
               "a name of its own, and bring it in if it is a photo of yours.";
    }
    if (!library.disk().exists(library.folder() / left_lock_name)) {
        return path +
               " is in no record, and was locked, by its name: it may be a photo of yours. Keep "
               "it; it can be read with the lock.json that it was locked under, of which a backup "
               "may hold a copy.";
    }
    return path +
           " is still locked, since it was damaged, could not be read, or was not there, when the "
           "lock was taken off; its key is kept in lock.left.json. It may be a photo that is "
           "missing: before you bring one in again, connect a backup, see to the disk and to the "
           "file's permissions, and go on with qturn lock remove.";
}

}  // namespace quarterturn
