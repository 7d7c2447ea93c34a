#pragma once
// Several runs of bytes as one, for the way between processes: who waits for each other after every
// small thing waits longer than the things take.

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace quarterturn {

std::vector<std::byte> bundled(std::span<const std::span<const std::byte>> parts);

// The parts, which lie in `bundle`. Nothing for bytes that `bundled` cannot have made.
std::optional<std::vector<std::span<const std::byte>>> unbundled(std::span<const std::byte> bundle);

}  // namespace quarterturn
