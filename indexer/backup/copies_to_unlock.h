#pragma once

#include <functional>
#include <optional>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// For unlocking a library for good: what its connected backups hold of a file, whole by the
// records' checksum. Nothing where the library cannot be opened. The library is closed again.
std::function<std::optional<Bytes>(const Path& file)> copies_to_unlock(FileSystem& disk,
                                                                       const Path& folder);

}  // namespace quarterturn
