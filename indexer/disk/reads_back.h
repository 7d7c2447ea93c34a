#pragma once

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Whether the disk answers for a synced file what was written to it. Throws DiskError.
bool reads_back_as(FileSystem& disk, const Path& file, std::span<const std::byte> bytes);

}  // namespace quarterturn
