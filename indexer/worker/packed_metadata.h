#pragma once
// What a photo file says of itself, as bytes for the way between processes.

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "indexer/metadata/read.h"

namespace quarterturn {

std::vector<std::byte> packed(const FileMetadata& metadata);

// Nothing for bytes that `packed` cannot have made. They may come from a process that a hostile
// file has taken over: numbers out of their range are refused too, and texts are what any file may
// say.
std::optional<FileMetadata> unpacked(std::span<const std::byte> bytes);

}  // namespace quarterturn
