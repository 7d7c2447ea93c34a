#include "indexer/backup/backups_at_hand.h"

#include <algorithm>

#include "indexer/backup/one_file.h"
#include "indexer/disk/checksum.h"

namespace quarterturn {
namespace {

std::optional<Bytes> right_bytes(FileSystem& disk, const Path& path, const LibraryFile& file) try {
    if (!lies_there(disk, path, file)) return std::nullopt;
    Bytes bytes = disk.read(path, any_size);
    if (sha256(bytes) != file.sha256) return std::nullopt;
    return bytes;
} catch (const DiskError&) {
    return std::nullopt;
}

bool lies_quietly(FileSystem& disk, const Path& path, const LibraryFile& file) try {
    return lies_there(disk, path, file);
} catch (const DiskError&) {
    return false;
}

}  // namespace

BackupSource::BackupSource(BackupFolder folder, const Manifest& listed)
    : folder_(std::move(folder)), checksums_(listed.files.begin(), listed.files.end()) {
    for (const auto& [path, sha256] : listed.files) paths_[sha256].push_back(path);
}

bool BackupSource::lists(const LibraryFile& file) const {
    const auto paths = paths_.find(file.sha256);
    return paths != paths_.end() &&
           std::ranges::any_of(paths->second, [&](const std::string& path) {
               return lies_quietly(folder_.disk(), folder_.file(path), file);
           });
}

std::optional<Bytes> BackupSource::bytes_of(const LibraryFile& file) const {
    const auto paths = paths_.find(file.sha256);
    if (paths == paths_.end()) return std::nullopt;
    for (const std::string& path : paths->second) {
        if (auto bytes = right_bytes(folder_.disk(), folder_.file(path), file)) return bytes;
    }
    return std::nullopt;
}

std::optional<Bytes> BackupSource::bytes_at(const std::string& path) const {
    const auto sha256 = checksums_.find(path);
    if (sha256 == checksums_.end()) return std::nullopt;
    return right_bytes(folder_.disk(), folder_.file(path), {path, sha256->second});
}

bool BackupSource::holds_apart_from(FileSystem& disk, std::span<const Path> others,
                                    const std::string& sha256) const {
    const auto paths = paths_.find(sha256);
    if (paths == paths_.end()) return false;
    return std::ranges::any_of(paths->second, [&](const std::string& path) {
        const Path file = folder_.file(path);
        const bool linked = std::ranges::any_of(others, [&](const Path& other) {
            return is_one_file(folder_.disk(), file, disk, other);
        });
        return !linked && right_bytes(folder_.disk(), file, {{}, sha256}).has_value();
    });
}

std::optional<BackupSource> at_hand(FileSystem& disk, const Backup& backup) try {
    BackupFolder folder(disk, backup.folder);
    const auto listed = folder.manifest();
    if (!listed || listed->mark != backup.mark) return std::nullopt;
    return BackupSource(std::move(folder), *listed);
} catch (const std::runtime_error&) {
    return std::nullopt;
}

std::vector<std::string> words_of_locked_backups(Library& library) {
    std::vector<std::string> words;
    for (const Backup& backup : library.backups().all()) {
        try {
            const BackupFolder opened(library.disk(), backup.folder);
        } catch (const LibraryLocked&) {
            words.push_back(
                "The backup in " + backup.folder.string() +
                " was made while the library was locked, and was not looked into: make a library "
                "of it in a new folder (qturn restore), and bring in from there what is missing.");
        } catch (const std::runtime_error&) {
            continue;
        }
    }
    return words;
}

std::vector<BackupSource> backups_at_hand(Library& library) {
    std::vector<BackupSource> sources;
    for (const Backup& backup : library.backups().all()) {
        if (auto source = at_hand(library.disk(), backup)) sources.push_back(std::move(*source));
    }
    return sources;
}

}  // namespace quarterturn
