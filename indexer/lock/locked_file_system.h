#pragma once
// A locked library's folder, or a backup's, as if it were not locked: contents and names are
// encrypted on their way to the file system beneath, and decrypted on their way back. Paths
// elsewhere go there as they are.
//
// Names at the top of the folder stay ("photos", "consent-form.txt"): they are the program's own.
// lock.json, "READ ME.txt" and the files of the records (locked_vfs.h sees to those) stay as they
// are altogether. What somebody put into the folder past the lock is not seen.

#include <optional>

#include "indexer/disk/disk_error.h"
#include "indexer/disk/file_system.h"
#include "indexer/lock/library_keys.h"
#include "indexer/lock/name_fronts.h"

namespace quarterturn {

// Whether a file, by its path below the folder, is never encrypted by the file system.
bool stays_as_it_is(const Path& below);

class LockedFileSystem final : public FileSystem {
  public:
    // `beneath` must outlive it.
    LockedFileSystem(FileSystem& beneath, const Path& folder, KeysInHand keys);

    FileSystem& beneath() { return beneath_; }
    const LibraryKeys& keys() const { return *keys_; }
    const KeysInHand& keys_in_hand() const { return keys_; }
    // Where a path in plain words lies on the disk.
    Path place_of(const Path& plain) const;
    // Of long names whose file is gone, when the program was interrupted in between.
    void drop_empty_fronts(const Path& folder);

    // Of a file that is no locked one any longer, the size is -1.
    FileState state(const Path& file) override;
    bool exists(const Path& file) override;
    bool is_folder(const Path& path) override;
    // Of a file that was damaged, these throw DiskError with EBADMSG.
    Bytes read(const Path& file, std::int64_t most_bytes) override;
    Bytes read_front(const Path& file, std::int64_t most_bytes) override;
    void read_through(const Path& file,
                      const std::function<void(std::span<const std::byte>)>& take) override;
    void read_back(const Path& file,
                   const std::function<void(std::span<const std::byte>)>& take) override;
    void write_new(const Path& file, std::span<const std::byte> bytes) override;
    void sync_file(const Path& file) override;
    void sync_folder(const Path& folder) override;
    // Files alone, and not between what is encrypted and what is not.
    void rename_new(const Path& from, const Path& to) override;
    void rename_over(const Path& from, const Path& to) override;
    void link_new(const Path& existing, const Path& name) override;
    void remove(const Path& file) override;
    void remove_empty_folder(const Path& folder) override;
    void make_folders(const Path& folder) override;
    std::vector<Path> list(const Path& folder) override;
    std::int64_t free_bytes(const Path& folder) override;

  private:
    // Nothing outside the folder; empty for the folder itself.
    std::optional<Path> below(const Path& path) const;
    bool encrypted(const Path& file) const;
    Bytes unlocked(const Path& file, const Bytes& locked) const;
    using ReadPieces = decltype(&FileSystem::read_through);
    void read_pieces(ReadPieces how, const Path& file,
                     const std::function<void(std::span<const std::byte>)>& take);
    std::optional<Path> plain_entry(const Path& folder, const Path& below_folder,
                                    const std::string& name) const;
    std::vector<std::string> names_at(const Path& below_folder, const Path& entry);
    void refuse_to_move(const Path& from, const Path& to, Doing doing);
    template <class Move>
    void move(const Path& from, const Path& to, Move move);
    // Which of these paths, or of the folders they lie in, lies there.
    Path plain_name(const Path& place, Path plain) const;
    // Calls the file system beneath; its errors name the file in plain words.
    template <class Call>
    auto named(const Path& plain, Doing doing, Call call) const;

    FileSystem& beneath_;
    NameFronts fronts_;
    Path folder_;
    KeysInHand keys_;
};

}  // namespace quarterturn
