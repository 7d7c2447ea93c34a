#include "indexer/backup/heal.h"

#include "indexer/disk/checksum.h"
#include "indexer/intake/incoming.h"
#include "indexer/intake/move_lock.h"
#include "indexer/intake/set_aside.h"

namespace quarterturn {
namespace {

std::optional<Bytes> whole_bytes(FileSystem& disk, const Path& copy,
                                 const std::string& sha256_of_it) try {
    Bytes bytes = disk.read(copy, any_size);
    return sha256(bytes) == sha256_of_it ? std::optional(std::move(bytes)) : std::nullopt;
} catch (const DiskError&) {
    return std::nullopt;
}

Path put_back(Library& library, const LibraryFile& file, const Bytes& bytes) {
    FileSystem& disk = library.disk();
    Incoming incoming(library);
    incoming.put(file.sha256, bytes);
    const Path place = library.folder() / file.path;
    disk.make_folders(place.parent_path());
    Path aside;
    if (disk.exists(place)) aside = set_aside(disk, place);
    disk.rename_new(incoming.part(file.sha256), place);
    disk.sync_folder(place.parent_path());
    return aside;
}

}  // namespace

Healed heal(Library& library, const LibraryFile& file, const std::vector<BackupSource>& sources) {
    const MoveLock lock(library);
    if (!lock.held()) return {};
    for (const BackupSource& source : sources) {
        if (const auto bytes = source.bytes_of(file)) {
            return {source.folder().folder(), put_back(library, file, *bytes)};
        }
    }
    return {};
}

Healed heal_by_copy(Library& library, const LibraryFile& file, const Path& copy) {
    const MoveLock lock(library);
    if (!lock.held()) return {};
    const auto bytes = whole_bytes(library.disk(), copy, file.sha256);
    if (!bytes) return {};
    return {copy, put_back(library, file, *bytes)};
}

}  // namespace quarterturn
