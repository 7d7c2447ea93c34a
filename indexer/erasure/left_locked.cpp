#include "indexer/erasure/left_locked.h"

#include "indexer/lock/lock_file.h"
#include "indexer/store/lock_leftovers.h"

namespace quarterturn {

std::vector<std::string> left_locked(Library& library) {
    const bool had_a_lock =
        !library.keys() && library.disk().exists(library.folder() / left_lock_name);
    if (!had_a_lock) return {};
    return locked_without_lock(library.disk(), library.folder());
}

void refuse_while_left_locked(Library& library) {
    const auto left = left_locked(library);
    if (left.empty()) return;
    const std::string more =
        left.size() == 1 ? "" : " and " + std::to_string(left.size() - 1) + " more";
    throw StoreError(
        "Nothing was erased: " + (library.folder() / left.front()).string() + more +
        " stayed locked when the lock was taken off, and may be of what is to go. Go on with "
        "qturn lock remove first; what the disk does not give any longer, remove by hand.");
}

}  // namespace quarterturn
