#include "indexer/backup/moved_files.h"

#include <algorithm>

#include "indexer/disk/checksum.h"
#include "indexer/disk/empty_folders.h"
#include "indexer/erasure/files_without_record.h"
#include "indexer/intake/move_lock.h"

namespace quarterturn {

std::optional<std::string> MovedFiles::find(const LibraryFile& file) {
    if (!unknown_) unknown_ = files_without_record(library_).files;
    const auto found = std::ranges::find_if(
        *unknown_, [&](const std::string& path) { return is_file(path, file); });
    return found == unknown_->end() ? std::nullopt : std::optional(*found);
}

bool MovedFiles::is_file(const std::string& path, const LibraryFile& file) try {
    const Path lies = library_.folder() / path;
    if (std::filesystem::is_symlink(lies) || !lies_there(library_.disk(), lies, file)) return false;
    auto checksum = checksums_.find(path);
    if (checksum == checksums_.end()) {
        checksum = checksums_.emplace(path, sha256_of_file(library_.disk(), lies)).first;
    }
    return checksum->second == file.sha256;
} catch (const DiskError&) {
    return false;
}

bool MovedFiles::put_back(const std::string& found, const LibraryFile& file) {
    const MoveLock lock(library_);
    FileSystem& disk = library_.disk();
    const Path place = library_.folder() / file.path;
    if (!lock.held() || disk.exists(place)) return false;
    const Path lies = library_.folder() / found;
    disk.make_folders(place.parent_path());
    disk.rename_new(lies, place);
    disk.sync_folder(place.parent_path());
    disk.sync_folder(lies.parent_path());
    drop_empty_folders(disk, library_.folder(), Path(found).parent_path());
    std::erase(*unknown_, found);
    return true;
}

}  // namespace quarterturn
