#include "indexer/erasure/listed_files.h"

#include <set>

#include "indexer/disk/empty_folders.h"
#include "indexer/intake/sort_steps.h"
#include "indexer/store/erasure_table.h"

namespace quarterturn {
namespace {

void remove_files(Library& library) {
    ErasureTable erasures(library.database());
    for (const std::string& path : erasures.files_left()) {
        const Path file = library.folder() / path;
        if (library.disk().exists(file)) {
            library.disk().remove(file);
            library.disk().sync_folder(file.parent_path());
        }
        drop_empty_folders(library.disk(), library.folder(), Path(path).parent_path());
        erasures.file_is_gone(path);
    }
}

}  // namespace

FilesToGo files_of_photos(Library& library, const std::vector<Photo>& photos,
                          const FilesWithoutRecord& strays) {
    FilesToGo found = strays_of(library, photos, strays);
    std::vector<std::string>& files = found.files;
    std::set<std::string> sums;
    for (const Photo& photo : photos) {
        files.push_back(photo.file.path);
        sums.insert(photo.file.sha256);
    }
    constexpr std::size_t sum_digits = 64;
    for (const char* folder : {"cache", "incoming"}) {
        for (const Path& file : files_below(library.disk(), library.folder() / folder)) {
            if (sums.contains(file.filename().string().substr(0, sum_digits))) {
                files.push_back(file.lexically_relative(library.folder()).generic_string());
            }
        }
    }
    return found;
}

void refuse_unless_alone(const MoveLock& lock) {
    if (lock.held()) return;
    throw StoreError(
        "Another program is moving photos of this library: wait until it has ended, and run the "
        "command again.");
}

void finish_alone(Library& library) {
    remove_files(library);
    move_to_folders(library);
    ErasureTable(library.database()).finish();
}

}  // namespace quarterturn
