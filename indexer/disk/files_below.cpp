#include "indexer/disk/file_system.h"

namespace quarterturn {
namespace {

void gather(FileSystem& disk, const Path& folder, std::vector<Path>& files) {
    for (const Path& entry : disk.list(folder)) {
        if (disk.is_folder(entry)) {
            gather(disk, entry, files);
        } else {
            files.push_back(entry);
        }
    }
}

}  // namespace

std::vector<Path> files_below(FileSystem& disk, const Path& folder) {
    std::vector<Path> files;
    if (disk.exists(folder)) gather(disk, folder, files);
    return files;
}

}  // namespace quarterturn
