#include "indexer/backup/heal.h"

#include "indexer/intake/incoming.h"
#include "indexer/intake/move_lock.h"
#include "indexer/intake/set_aside.h"

namespace quarterturn {
namespace {

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

}  // namespace quarterturn
