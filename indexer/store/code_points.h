#pragma once

#include <unicode/utf8.h>

#include <cstdint>
#include <string_view>

namespace quarterturn {

// Calls `visit` with each code point, a negative number for bytes that are no UTF-8.
template <class Visit>
void each_code_point(std::string_view text, Visit visit) {
    const auto length = static_cast<std::int32_t>(text.size());
    for (std::int32_t at = 0; at < length;) {
        UChar32 point = 0;
        U8_NEXT(text.data(), at, length, point);
        visit(point);
    }
}

}  // namespace quarterturn
