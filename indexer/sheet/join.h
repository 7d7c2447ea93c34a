#pragma once

#include <string>
#include <string_view>

namespace quarterturn {

// Puts a part behind what is there, with the separator between; nothing for an empty part.
inline void add_part(std::string& all, std::string_view separator, std::string_view part) {
    if (part.empty()) return;
    if (!all.empty()) all += separator;
    all += part;
}

}  // namespace quarterturn
