#include "indexer/backup/moved_files.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "indexer/backup/left_by_lock.h"
#include "indexer/disk/checksum.h"
#include "indexer/disk/empty_folders.h"
#include "indexer/erasure/files_without_record.h"
#include "indexer/erasure/stray_files.h"
#include "indexer/intake/move_lock.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/store/lost_lock.h"
#include "indexer/store/past_lock.h"

namespace quarterturn {
namespace {

// What the program itself put there, and those of hers that are gone through already.
bool is_gone_through(const Path& below) {
    const std::string top = below.begin()->native();
    const bool of_hers = std::ranges::find(folders_of_hers, top) != folders_of_hers.end();
    return of_hers || is_named_by_checksum(below) || stays_as_it_is(below);
}

// As in a folder that she made beside the others.
std::vector<std::string> files_elsewhere(Library& library) try {
    const auto below = [&](const Path& entry) {
        return entry.lexically_relative(library.folder());
    };
    const FilesInReach found =
        files_in_reach(library.disk(), library.folder(),
                       [&](const Path& entry) { return is_gone_through(below(entry)); });
    std::vector<std::string> paths;
    for (const Path& file : found.files) paths.push_back(below(file).generic_string());
    return paths;
} catch (const DiskError&) {
    return {};
}

}  // namespace

void MovedFiles::look_around() {
    if (std::exchange(looked_, true)) return;
    unknown_ = files_without_record(library_).files;
    std::ranges::move(files_elsewhere(library_), std::back_inserter(unknown_));
    past_lock_ = moved_past_lock(library_);
}

std::optional<std::string> MovedFiles::find_copy(const LibraryFile& file) {
    look_around();
    const auto found = std::ranges::find_if(
        unknown_, [&](const std::string& path) { return is_file(path, file); });
    return found == unknown_.end() ? std::nullopt : std::optional(*found);
}

std::optional<std::string> MovedFiles::find(const LibraryFile& file) {
    if (auto found = find_copy(file)) return found;
    const auto found = std::ranges::find_if(
        past_lock_, [&](const std::string& path) { return is_file(path, file); });
    return found == past_lock_.end() ? std::nullopt : std::optional(*found);
}

bool MovedFiles::has_size_of(const std::string& path, const LibraryFile& file) {
    const Path lies = library_.folder() / path;
    if (std::ranges::find(past_lock_, path) == past_lock_.end()) {
        return lies_there(library_.disk(), lies, file);
    }
    const FileState state = past_lock_of(library_).beneath().state(lies);
    const auto bytes = unlocked_size(state.bytes);
    return state.regular && bytes && (file.bytes < 0 || *bytes == file.bytes);
}

std::string MovedFiles::checksum_of(const std::string& path) {
    const Path lies = library_.folder() / path;
    if (std::ranges::find(past_lock_, path) == past_lock_.end()) {
        return sha256_of_file(library_.disk(), lies);
    }
    return sha256(bytes_sealed(past_lock_of(library_), lies));
}

bool MovedFiles::is_file(const std::string& path, const LibraryFile& file) try {
    const Path lies = library_.folder() / path;
    if (std::filesystem::is_symlink(lies) || !has_size_of(path, file)) return false;
    auto checksum = checksums_.find(path);
    if (checksum == checksums_.end()) {
        checksum = checksums_.emplace(path, checksum_of(path)).first;
    }
    return checksum->second == file.sha256;
} catch (const DiskError&) {
    return false;
}

void MovedFiles::move(const std::string& found, const Path& place) {
    const Path lies = library_.folder() / found;
    if (std::ranges::find(past_lock_, found) != past_lock_.end()) {
        return give_name(past_lock_of(library_), library_.folder(), lies, place);
    }
    FileSystem& disk = library_.disk();
    disk.make_folders(place.parent_path());
    disk.rename_new(lies, place);
    disk.sync_folder(place.parent_path());
    disk.sync_folder(lies.parent_path());
    drop_empty_folders(disk, library_.folder(), Path(found).parent_path());
}

bool MovedFiles::put_back(const std::string& found, const LibraryFile& file) {
    const MoveLock lock(library_);
    const Path place = library_.folder() / file.path;
    if (!lock.held() || library_.disk().exists(place)) return false;
    move(found, place);
    std::erase(unknown_, found);
    std::erase(past_lock_, found);
    return true;
}

}  // namespace quarterturn
