#include "indexer/backup/one_file.h"

namespace quarterturn {

bool is_one_file(FileSystem& disk, const Path& file, FileSystem& other_disk,
                 const Path& other) try {
    return disk.state(file).is_one_file_with(other_disk.state(other));
} catch (const DiskError&) {
    return false;
}

}  // namespace quarterturn
