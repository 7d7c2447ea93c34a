#include "indexer/backup/left_by_lock.h"

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

bool is_still_locked(Library& library, const std::string& path) {
    return !library.keys() && looks_locked(Path(path).filename().native()) &&
           library.disk().exists(library.folder() / left_lock_name);
}

std::string still_locked(const std::string& path) {
    return path +
           " is still locked, since it could not be read when the lock was taken off; its "
           "key is kept in lock.left.json. See to the disk and to the file's permissions, "
           "and go on with qturn lock remove.";
}

}  // namespace quarterturn
