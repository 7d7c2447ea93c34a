#include "indexer/erasure/listed_files.h"

#include <set>

#include "indexer/disk/empty_folders.h"
#include "indexer/intake/file_names.h"
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

// What was found changed of the photos, and kept beside them (intake/set_aside.h), unless it was
// brought in since as a photo of its own.
std::vector<std::string> set_aside_of(Library& library, const std::vector<Photo>& photos) {
    constexpr int most_of_one = 99;
    std::set<Path> recorded;
    for (const StoredFile& stored : library.photos().stored_files()) recorded.insert(stored.path);
    std::vector<std::string> files;
    for (const Photo& photo : photos) {
        const Path file = photo.file.path;
        for (int number = 1; number <= most_of_one; ++number) {
            const Path aside = file.parent_path() / changed_name(file.filename().native(), number);
            if (recorded.contains(aside) || !library.disk().exists(library.folder() / aside)) {
                continue;
            }
            files.push_back(aside.generic_string());
        }
    }
    return files;
}

}  // namespace

std::vector<std::string> files_of_photos(Library& library, const std::vector<Photo>& photos) {
    std::vector<std::string> files = set_aside_of(library, photos);
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
    return files;
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
