#include "indexer/disk/file_system.h"

namespace quarterturn {
namespace {

// A name in the same folder that nobody has: rename works only within one disk.
Path temporary_name(FileSystem& disk, const Path& file) {
    for (int number = 0;; ++number) {
        Path name = file.parent_path() / (".writing-" + std::to_string(number));
        if (!disk.exists(name)) return name;
    }
}

}  // namespace

void replace_file(FileSystem& disk, const Path& file, std::span<const std::byte> bytes) {
    const Path waiting = temporary_name(disk, file);
    disk.write_new(waiting, bytes);
    try {
        disk.sync_file(waiting);
        disk.rename_over(waiting, file);
    } catch (...) {
        try {
            disk.remove(waiting);
        } catch (const DiskError&) {
            // The first failure is the one to tell of.
        }
        throw;
    }
    disk.sync_folder(file.parent_path().empty() ? Path{"."} : file.parent_path());
}

}  // namespace quarterturn
