#include "indexer/backup/one_file.h"

namespace quarterturn {

bool is_one_file(const FileState& file, FileSystem& disk, const Path& other) try {
    return file.is_one_file_with(disk.state(other));
} catch (const DiskError&) {
    return false;
}

bool is_one_file(FileSystem& disk, const Path& file, FileSystem& other_disk,
                 const Path& other) try {
    return is_one_file(disk.state(file), other_disk, other);
} catch (const DiskError&) {
    return false;
}

}  // namespace quarterturn
