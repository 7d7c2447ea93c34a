#pragma once

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Where a file that write_once writes waits until it is whole, in the same folder.
Path unseen_name(const Path& file);
bool is_unseen_name(const Path& file);

// Writes a file that was not there before: it appears under its name only when all of it is on the
// disk and reads back as it was written, and nothing is ever written over. Throws DiskError, also
// when something of that name is there, and then leaves nothing of its own.
void write_once(FileSystem& disk, const Path& file, std::span<const std::byte> bytes);

}  // namespace quarterturn
