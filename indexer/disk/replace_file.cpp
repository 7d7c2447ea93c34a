#include "indexer/disk/checksum.h"
#include "indexer/disk/disk_error.h"
#include "indexer/disk/file_system.h"

namespace quarterturn {
namespace {

// In the same folder, since a rename works only within one disk, and the same each time, so that
// what a power cut left there is cleared away.
Path waiting_name(const Path& file) {
    return file.parent_path() / (".writing-" + sha256(file.filename().native()).substr(0, 16));
}

void remove_if_it_can_be(FileSystem& disk, const Path& file) {
    try {
        disk.remove(file);
    } catch (const DiskError&) {
        // The failure before this one is the one to tell of.
    }
}

}  // namespace

void replace_file(FileSystem& disk, const Path& file, std::span<const std::byte> bytes) try {
    const Path waiting = waiting_name(file);
    if (disk.exists(waiting)) disk.remove(waiting);
    disk.write_new(waiting, bytes);
    try {
        disk.sync_file(waiting);
        disk.rename_over(waiting, file);
    } catch (...) {
        remove_if_it_can_be(disk, waiting);
        throw;
    }
    disk.sync_folder(file.parent_path().empty() ? Path{"."} : file.parent_path());
} catch (const DiskError& error) {
    // She knows her file, not the name it waits under.
    throw disk_error(error.error_number(), file, Doing::writing);
}

}  // namespace quarterturn
