#pragma once
// The one way to the disk for everything that is written. It must be possible to pull the power at
// any instant: a file appears under its own name only when all of it is on the disk, so writes go
// write, sync, rename, sync the folder. Every call is virtual so that a test can make each of them
// fail; nothing else in the house calls the operating system to write.

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <vector>

namespace quarterturn {

using Path = std::filesystem::path;
using Bytes = std::vector<std::byte>;

// For read(), where a file may be as large as it is.
inline constexpr auto any_size = std::numeric_limits<std::int64_t>::max();

// A file could not be read or written. what() is a sentence that names the file and the next step.
class DiskError : public std::runtime_error {
  public:
    DiskError(const std::string& sentence, Path file, int error_number)
        : std::runtime_error(sentence), file_(std::move(file)), error_number_(error_number) {}

    const Path& file() const { return file_; }
    int error_number() const { return error_number_; }
    bool disk_full() const;
    bool not_empty() const;
    bool not_allowed() const;
    bool damaged() const;  // the file was read, and is not what was written

  private:
    Path file_;
    int error_number_;
};

struct FileState {
    std::int64_t bytes = 0;
    std::int64_t modified_ns = 0;  // since the Unix epoch
    bool regular = false;          // a plain file: no folder, pipe or device
    // Which file it is on this computer, whatever name led to it; 0 where that is not known.
    std::uint64_t device = 0;
    std::uint64_t number = 0;

    bool is_one_file_with(const FileState& other) const {
        return number != 0 && number == other.number && device == other.device;
    }
};

// All functions throw DiskError. Paths may hold any bytes.
class FileSystem {
  public:
    virtual ~FileSystem() = default;

    virtual FileState state(const Path& file) = 0;  // follows links
    virtual bool exists(const Path& file) = 0;      // a link counts, wherever it leads
    virtual bool is_folder(const Path& path) = 0;   // itself: a link to one is none
    // The whole of an ordinary file. Refuses one that is larger than `most_bytes`, that changes
    // while it is read, and pipes, devices and folders.
    virtual Bytes read(const Path& file, std::int64_t most_bytes) = 0;
    // At most so many bytes from the start of an ordinary file of any size.
    virtual Bytes read_front(const Path& file, std::int64_t most_bytes) = 0;
    // An ordinary file of any size, given piece by piece in its order; refuses what read() refuses.
    virtual void read_through(const Path& file,
                              const std::function<void(std::span<const std::byte>)>& take) = 0;
    // The same, past the page cache where the system lets us and the file was synced, so that it is
    // the disk that answers.
    virtual void read_back(const Path& file,
                           const std::function<void(std::span<const std::byte>)>& take) = 0;
    // Creates the file with mode 0600; refuses to overwrite; leaves nothing when it fails.
    virtual void write_new(const Path& file, std::span<const std::byte> bytes) = 0;
    virtual void sync_file(const Path& file) = 0;
    virtual void sync_folder(const Path& folder) = 0;
    virtual void rename_new(const Path& from, const Path& to) = 0;   // never overwrites
    virtual void rename_over(const Path& from, const Path& to) = 0;  // replaces `to`
    // Never overwrites. Fails with EPERM or ENOTSUP on disks that know no second names (FAT).
    virtual void link_new(const Path& existing, const Path& name) = 0;
    virtual void remove(const Path& file) = 0;
    virtual void remove_empty_folder(const Path& folder) = 0;
    virtual void make_folders(const Path& folder) = 0;  // mode 0700; new ones are synced
    // What lies in the folder, each with the folder before its name; sorted by name.
    virtual std::vector<Path> list(const Path& folder) = 0;
    virtual std::int64_t free_bytes(const Path& folder) = 0;
};

// Nothing where no file and no link has that name. Throws DiskError.
std::optional<FileState> state_if_there(FileSystem& disk, const Path& file);

// All that lies below the folder and is no folder, at any depth; nothing where it is not there.
// Links are named and not followed.
std::vector<Path> files_below(FileSystem& disk, const Path& folder);

struct FilesInReach {
    std::vector<Path> files;
    std::vector<DiskError> out_of_reach;  // each of what may be a folder, and was passed over
};

// The same of a folder that is there, without what the disk does not give below it, and without
// what `passed_over` says of an entry.
FilesInReach files_in_reach(FileSystem& disk, const Path& folder,
                            const std::function<bool(const Path& entry)>& passed_over);

FileSystem& real_file_system();

// Writes `bytes` so that `file` is, at any instant, either what it was or all of the new.
void replace_file(FileSystem& disk, const Path& file, std::span<const std::byte> bytes);

}  // namespace quarterturn
