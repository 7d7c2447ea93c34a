#pragma once
// SHA-256 (FIPS 180-4), as lower-case hex.

#include <cstddef>
#include <memory>
#include <span>
#include <string>
#include <string_view>

namespace quarterturn {

std::string sha256(std::span<const std::byte> bytes);
std::string sha256(std::string_view text);

}  // namespace quarterturn
