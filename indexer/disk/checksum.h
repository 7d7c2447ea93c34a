#pragma once
// SHA-256 (FIPS 180-4), as lower-case hex.

#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <string_view>

#include "indexer/disk/file_system.h"

namespace quarterturn {

std::string sha256(std::span<const std::byte> bytes);
std::string sha256(std::string_view text);

// Of a file of any size, read piece by piece. Throws DiskError.
std::string sha256_of_file(FileSystem& disk, const Path& file);

// The same as the disk answers it (FileSystem::read_back).
std::string sha256_read_back(FileSystem& disk, const Path& file);

// A file that is damaged has none. Throws DiskError.
bool has_checksum(FileSystem& disk, const Path& file, std::string_view checksum);

// Whether the file is an ordinary one of so many bytes with this checksum. Throws DiskError.
bool holds(FileSystem& disk, const Path& file, std::int64_t bytes, std::string_view checksum);

}  // namespace quarterturn
