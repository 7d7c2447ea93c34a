#include "indexer/store/lock_fits_disk.h"

#include <algorithm>
#include <climits>

#include "indexer/record/megabytes.h"
#include "indexer/store/records_file.h"

namespace quarterturn {
namespace {

// What the disk does not give is left as it is.
std::int64_t bytes_of(FileSystem& disk, const Path& file) try {
    return disk.state(file).bytes;
} catch (const DiskError&) {
    return 0;
}

}  // namespace

void refuse_long_paths(LockedFileSystem& locked, const std::vector<Path>& files) {
    constexpr std::size_t longest_path = PATH_MAX - 64;
    for (const Path& file : files) {
        if (locked.place_of(file).native().size() < longest_path) continue;
        throw StoreError("The path of " + file.string() +
                         " is too long to be locked: shorten the names of its folders, and try "
                         "again. Nothing was changed.");
    }
}

void refuse_without_room_to_lock(FileSystem& disk, const Path& folder,
                                 const std::vector<Path>& files) {
    constexpr std::int64_t spare = 1'000'000;
    std::int64_t largest = 0;
    for (const Path& file : files) largest = std::max(largest, bytes_of(disk, file));
    const std::int64_t needed = 2 * disk.state(folder / records_file_name).bytes + largest + spare;
    if (disk.free_bytes(folder) >= needed) return;
    throw StoreError("There is not enough room on the disk that holds " + folder.string() +
                     " to lock it: " + megabytes(needed) +
                     " must be free. Free some, and try again. Nothing was changed.");
}

}  // namespace quarterturn
