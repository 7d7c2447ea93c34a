#include <cerrno>

#include "indexer/disk/file_system.h"

namespace quarterturn {

std::optional<FileState> state_if_there(FileSystem& disk, const Path& file) try {
    return disk.state(file);
} catch (const DiskError& error) {
    const bool none = error.error_number() == ENOENT || error.error_number() == ENOTDIR;
    // A link that leads nowhere lies there all the same.
    if (!none || disk.exists(file)) throw;
    return std::nullopt;
}

}  // namespace quarterturn
