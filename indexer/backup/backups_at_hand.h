#pragma once
// The backups whose drives are connected, as places that good bytes can be had from.

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/backup/backup_folder.h"
#include "indexer/backup/library_files.h"

namespace quarterturn {

// One backup by what its files hold. A file is only ever given when its checksum is right.
class BackupSource {
  public:
    BackupSource(BackupFolder folder, const Manifest& listed);

    const BackupFolder& folder() const { return folder_; }
    // Whether it is on the list there and lies there with the right size.
    bool lists(const LibraryFile& file) const;
    // Its bytes; nothing when they are not there, cannot be read or are damaged. Safe to use from
    // several threads.
    std::optional<Bytes> bytes_of(const LibraryFile& file) const;
    // What it holds under this path, whole by its list.
    std::optional<Bytes> bytes_at(const std::string& path) const;
    // Whether it holds them in a file of its own, which is none of the others on that disk by a
    // link. Reads all of it. Safe to use from several threads.
    bool holds_apart_from(FileSystem& disk, std::span<const Path> others,
                          const std::string& sha256) const;

  private:
    BackupFolder folder_;
    std::map<std::string, std::string> checksums_;           // by path
    std::map<std::string, std::vector<std::string>> paths_;  // by checksum
};

// Those of the library's backups that are where they lay last. What cannot be read is passed over.
std::vector<BackupSource> backups_at_hand(Library& library);
// Of those that are locked, and whose keys nobody has given.
std::vector<std::string> words_of_locked_backups(Library& library);
// That one where it is at hand.
std::optional<BackupSource> at_hand(FileSystem& disk, const Backup& backup);

}  // namespace quarterturn
