#include "indexer/backup/library_files.h"

#include "indexer/disk/checksum.h"
#include "indexer/looks/consent_form.h"
#include "indexer/store/recipe_rules_file.h"

namespace quarterturn {

std::vector<LibraryFile> recorded_files(Library& library) {
    std::vector<LibraryFile> files;
    for (StoredFile& photo : library.photos().stored_files()) {
        files.push_back({std::move(photo.path), std::move(photo.sha256), photo.bytes, photo.id});
    }
    for (const ConsentPaper& paper : library.consents().papers()) {
        files.push_back({paper.path, paper.sha256, paper.bytes});
    }
    for (const Inspiration& brought : library.inspirations().all()) {
        files.push_back({brought.path.generic_string(), brought.sha256});
    }
    return files;
}

std::vector<LibraryFile> loose_texts(Library& library) {
    std::vector<LibraryFile> files;
    for (const char* name : {consent_form_name, recipe_rules_name, recipe_rules_before_name}) {
        const Path file = library.folder() / name;
        if (!library.disk().exists(file)) continue;
        files.push_back(
            {name, sha256_of_file(library.disk(), file), library.disk().state(file).bytes});
    }
    return files;
}

bool holds(FileSystem& disk, const Path& file, const LibraryFile& wanted) {
    return lies_there(disk, file, wanted) && has_checksum(disk, file, wanted.sha256);
}

bool lies_there(FileSystem& disk, const Path& file, const LibraryFile& wanted) {
    const auto state = state_if_there(disk, file);
    return state && has_size(*state, wanted);
}

bool has_size(const FileState& state, const LibraryFile& wanted) {
    return state.regular && (wanted.bytes < 0 || state.bytes == wanted.bytes);
}

OwnFile look_at_own(FileSystem& disk, const Path& file) try {
    const auto state = state_if_there(disk, file);
    return {!state, state};
} catch (const DiskError&) {
    return {};
}

}  // namespace quarterturn
