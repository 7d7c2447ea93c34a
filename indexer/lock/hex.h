#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace quarterturn {

std::string to_hex(std::span<const unsigned char> bytes);
// Nothing when it is no hex of so many bytes.
std::optional<std::vector<unsigned char>> from_hex(std::string_view hex, std::size_t bytes);

}  // namespace quarterturn
