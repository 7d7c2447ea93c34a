#include "indexer/backup/left_by_lock.h"

#include <algorithm>

#include "indexer/lock/lock_file.h"
#include "indexer/lock/locked_name.h"
#include "indexer/store/lock_library.h"

namespace quarterturn {
namespace {

FileSystem& beneath(Library& library) {
    return dynamic_cast<LockedFileSystem&>(library.disk()).beneath();
}

}  // namespace

std::vector<std::string> lock_what_lies_open_in(Library& library, const std::stop_token& stop) {
    LockWishes wishes;
    wishes.stop = stop;
    return lock_what_is_left(beneath(library), library.folder(), library.keys(), wishes).problems;
}

std::vector<std::string> what_lies_open_in(Library& library) {
    std::vector<std::string> sentences;
    for (const Path& file : left_unlocked(beneath(library), library.folder(), library.keys())) {
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
    if (!library.disk().exists(library.folder() / left_lock_name)) {
        return path +
               " is in no record, and was locked, by its name: it may be a photo of yours. Keep "
               "it; it can be read with the lock.json that it was locked under, of which a backup "
               "may hold a copy.";
    }
    return path +
           " is still locked, since it could not be read when the lock was taken off; its "
           "key is kept in lock.left.json. See to the disk and to the file's permissions, "
           "and go on with qturn lock remove.";
}

}  // namespace quarterturn
