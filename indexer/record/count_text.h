#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace quarterturn {

// "1 photo", "12 photos". `many` is only needed where an s is not enough.
std::string count_text(std::size_t count, std::string_view one, std::string_view many = {});

}  // namespace quarterturn
