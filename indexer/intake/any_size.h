#pragma once

#include <cstdint>
#include <limits>

namespace quarterturn {

// For FileSystem::read: all of the file, however long it is.
inline constexpr auto any_size = std::numeric_limits<std::int64_t>::max();

}  // namespace quarterturn
