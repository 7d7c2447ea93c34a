#pragma once
// A backup as it lies on a drive, in plain files:
//
//   photos/ consents/ inspiration/   as in the library
//   records/records-20261107T101203Z.sqlite   the records as they were then, by UTC
//   checksums.sha256                  all of these with their SHA-256 (manifest.h)
//   READ ME.txt                       what the folder is, and how to get photos out of it
//
// Of a locked library all of these but the last are encrypted as they are there, and lock.json lies
// beside them.
//
// While a backup is being made, "unfinished" lists what may lie there beside the list of files,
// and moving/ holds what waits for a name that is still taken.

#include <optional>
#include <string>
#include <vector>

#include "indexer/backup/manifest.h"
#include "indexer/disk/file_system.h"
#include "indexer/lock/locked_file_system.h"

namespace quarterturn {

inline constexpr const char* manifest_name = "checksums.sha256";
inline constexpr const char* read_me_name = "READ ME.txt";
inline constexpr const char* moving_name = "moving";

// A text file of any length. Throws DiskError.
std::string text_of_file(FileSystem& disk, const Path& file);

class BackupFolder {
  public:
    // Throws StoreError when it is locked and its key is not on the key ring, DiskError.
    BackupFolder(FileSystem& disk, Path folder);

    // Sees through its lock, where it has one.
    FileSystem& disk() const { return locked_ ? *locked_ : *beneath_; }
    // Null where it has none.
    KeysInHand keys() const { return locked_ ? locked_->keys_in_hand() : nullptr; }
    const Path& folder() const { return folder_; }
    Path file(const std::string& path) const { return folder_ / path; }

    // The list of files; nothing where there is none. Throws StoreError when it is damaged or
    // another library's lock.json lies beside it, and DiskError.
    std::optional<Manifest> manifest() const;
    void replace_manifest(const Manifest& manifest) const;

    // What a backup that did not end may have left beside the list of files.
    std::vector<std::string> unfinished() const;
    void note_unfinished(const std::vector<std::string>& paths) const;
    void forget_unfinished() const;

    // Only when other words stand there.
    void write_read_me() const;

    // False when it is not there. What was being written to it goes, too.
    bool remove(const std::string& path) const;
    // The folder of this file, where it is empty, and then those above it.
    void drop_empty_folders_of(const std::string& path) const;
    // Removes what was being written when the power went, in the folder of this file.
    void make_way(const std::string& path) const;

  private:
    std::string manifest_text_there() const;

    FileSystem* beneath_;
    Path folder_;
    std::shared_ptr<LockedFileSystem> locked_;
};

// "records/records-20261107T101203Z.sqlite"
std::string records_path(std::chrono::sys_seconds utc);
// The time in such a path; nothing when it is none.
std::optional<std::chrono::sys_seconds> time_of_records(const std::string& path);
bool is_records_path(const std::string& path);
// The copies of the records on the list, the oldest first: their names follow their times.
std::vector<std::string> records_in(const Manifest& manifest);
// Of these, which are kept: the last ten, and of each month before that the last.
std::vector<std::string> records_to_keep(const std::vector<std::string>& records);

}  // namespace quarterturn
