#pragma once

#include <functional>
#include <optional>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// For unlocking a library for good, also where that was interrupted: what its connected backups
// hold of a file, whole by the records' checksum, or of a text by their own. To be asked once the
// records are unlocked.
std::function<std::optional<Bytes>(const Path& file)> copies_to_unlock(FileSystem& disk,
                                                                       const Path& folder);

}  // namespace quarterturn
