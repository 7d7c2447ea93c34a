#pragma once

#include <cstdint>
#include <string>

namespace quarterturn {

// "3 MB", rounded up.
inline std::string megabytes(std::int64_t bytes) {
    constexpr std::int64_t megabyte = 1'000'000;
    return std::to_string((bytes + megabyte - 1) / megabyte) + " MB";
}

}  // namespace quarterturn
