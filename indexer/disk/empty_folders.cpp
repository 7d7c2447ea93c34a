#include "indexer/disk/empty_folders.h"

namespace quarterturn {

void drop_empty_folders(FileSystem& disk, const Path& root, Path folder) {
    while (folder.has_parent_path() && disk.exists(root / folder) &&
           disk.list(root / folder).empty()) {
        try {
            disk.remove_empty_folder(root / folder);
        } catch (const DiskError& error) {
            if (error.not_empty()) return;  // what a lock does not show lies in it
            throw;
        }
        disk.sync_folder(root / folder.parent_path());
        folder = folder.parent_path();
    }
}

}  // namespace quarterturn
