#pragma once

#include <cstddef>
#include <optional>
#include <span>

namespace quarterturn {

// How many bytes at the front of a JPEG hold all that the file says of itself: everything before the
// picture's own data (ITU-T T.81, B.2). Nothing when `front` ends before that, or is no JPEG.
std::optional<std::size_t> jpeg_header_bytes(std::span<const std::byte> front);

// The part of a whole file that its metadata stand in: of a JPEG its header, of others all of it.
std::span<const std::byte> metadata_part(std::span<const std::byte> file);

}  // namespace quarterturn
