#include "indexer/backup/records_copy.h"

#include "indexer/disk/checksum.h"
#include "indexer/store/records_file.h"

namespace quarterturn {

std::string write_records_copy(Library& library, const BackupFolder& folder,
                               const std::string& path) {
    FileSystem& disk = folder.disk();
    const Path waiting = folder.file(waiting_records);
    disk.make_folders(waiting.parent_path());
    copy_records(library, waiting);
    std::string sum = sha256_of_file(disk, waiting);
    if (sha256_read_back(disk, waiting) != sum || !sound_copy(waiting)) {
        throw StoreError("The records could not be copied whole to " + folder.folder().string() +
                         ": run qturn verify; the backup before is as it was.");
    }
    const Path file = folder.file(path);
    if (disk.exists(file)) disk.remove(file);  // left by a backup that did not end
    disk.rename_new(waiting, file);
    disk.sync_folder(file.parent_path());
    return sum;
}

}  // namespace quarterturn
