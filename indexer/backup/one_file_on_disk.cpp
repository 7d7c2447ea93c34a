#include "indexer/backup/one_file_on_disk.h"

#include "indexer/intake/stored_copies.h"
#include "indexer/lock/locked_file_system.h"

namespace quarterturn {
namespace {

Path place_on_disk(FileSystem& disk, const Path& file) {
    const auto* locked = dynamic_cast<const LockedFileSystem*>(&disk);
    return locked != nullptr ? locked->place_of(file) : file;
}

}  // namespace

bool is_one_file_on_disk(FileSystem& disk, const Path& file, FileSystem& other_disk,
                         const Path& other) {
    return one_file(place_on_disk(disk, file), place_on_disk(other_disk, other));
}

}  // namespace quarterturn
