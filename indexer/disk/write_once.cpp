#include "indexer/disk/write_once.h"

#include <cerrno>

#include "indexer/disk/checksum.h"
#include "indexer/disk/disk_error.h"
#include "indexer/disk/reads_back.h"

namespace quarterturn {
namespace {

constexpr std::string_view unseen_front = ".new-";

void refuse_unless_equal(FileSystem& disk, const Path& unseen, const Path& file,
                         std::span<const std::byte> bytes) {
    if (reads_back_as(disk, unseen, bytes)) return;
    throw DiskError(file.string() +
                        " does not read back as it was written: the disk may be failing. Choose "
                        "another disk.",
                    file, EIO);
}

void remove_quietly(FileSystem& disk, const Path& file) noexcept {
    try {
        disk.remove(file);
    } catch (const std::exception&) {
        // The failure before this one is the one to tell of.
    }
}

}  // namespace

Path unseen_name(const Path& file) {
    return file.parent_path() /
           (std::string(unseen_front) + sha256(file.filename().native()).substr(0, 16));
}

bool is_unseen_name(const Path& file) {
    constexpr std::size_t letters = 16;
    const std::string name = file.filename().native();
    return name.starts_with(unseen_front) && name.size() == unseen_front.size() + letters;
}

void write_once(FileSystem& disk, const Path& file, std::span<const std::byte> bytes) {
    if (disk.exists(file)) throw disk_error(EEXIST, file, Doing::writing);
    const Path unseen = unseen_name(file);
    if (disk.exists(unseen)) disk.remove(unseen);  // left by a power cut
    try {
        disk.write_new(unseen, bytes);
    } catch (const DiskError& error) {
        // She knows her file, not the name it waits under.
        throw disk_error(error.error_number(), file, Doing::writing);
    }
    try {
        disk.sync_file(unseen);
        refuse_unless_equal(disk, unseen, file, bytes);
        disk.rename_new(unseen, file);
    } catch (...) {
        remove_quietly(disk, unseen);
        throw;
    }
    try {
        disk.sync_folder(file.parent_path().empty() ? Path{"."} : file.parent_path());
    } catch (...) {
        remove_quietly(disk, file);
        throw;
    }
}

}  // namespace quarterturn
