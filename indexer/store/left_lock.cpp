#include "indexer/store/left_lock.h"

#include "indexer/store/lock_fits.h"
#include "indexer/store/lock_mark.h"
#include "indexer/store/recorded_and_missing.h"
#include "indexer/store/records_file.h"
#include "indexer/store/records_watch.h"

namespace quarterturn {
namespace {

constexpr std::int64_t front_that_tells = 16;

bool records_are_plain(const Path& folder) {
    return begins_as_plain_records(raw_front(folder / records_file_name, front_that_tells));
}

}  // namespace

// Then it was lock.json when unlocking began.
bool was_left_by_unlocking(const Path& folder, const LockFile& left) {
    return left.state == LockState::unlocking && noted_lock_mark(folder) == left.mark;
}

std::string missing_while_unlocking(const std::vector<std::string>& missing) {
    const auto others = missing.size() - 1;
    return missing.front() +
           (others == 0 ? " is" : " and " + std::to_string(others) + " more are") +
           " in the records and not in the library. Where such a file lies elsewhere and is "
           "locked, only the key in lock.left.json opens it: leave that there. Look for it, put it "
           "back into the library's folder, and go on with qturn lock remove; or connect a backup "
           "and run qturn verify. Where it is lost for good, move lock.left.json out of the "
           "folder.";
}

std::string left_lock_of_another() {
    return "Nothing in this library needs lock.left.json, and its records do not know that: it may "
           "be another library's only key. Leave it, or move it to where it belongs.";
}

std::string why_left_lock_is_there(FileSystem& disk, const Path& folder, const LockFile& left) {
    const auto missing = recorded_and_missing(disk, folder);
    if (!missing.empty()) return missing_while_unlocking(missing);
    return was_left_by_unlocking(folder, left)
               ? "Nothing needs lock.left.json any longer: qturn lock remove takes it away."
               : left_lock_of_another();
}

void refuse_left_lock_of_another(FileSystem& disk, const Path& folder, const KeysInHand& keys) {
    const auto left = read_left_lock(disk, folder);
    if (!left || was_left_by_unlocking(folder, *left)) return;
    if (!records_are_plain(folder)) return refuse_lock_that_does_not_fit(disk, folder, keys);
    if (opens_something(disk, folder, keys)) return;
    throw StoreError(left_lock_of_another() + " Nothing was changed.");
}

void refuse_second_left_lock(FileSystem& disk, const Path& folder, const LockFile& lock) {
    const auto left = read_left_lock(disk, folder);
    if (!left || left->mark == lock.mark) return;
    throw StoreError((folder / left_lock_name).string() +
                     " belongs to another lock than this library's, and may be the only key of "
                     "what was locked under it: move it to where it belongs, and try again. "
                     "Nothing was changed.");
}

}  // namespace quarterturn
