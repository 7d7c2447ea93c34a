#pragma once
// Words and bytes as HTML5 takes them.

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace quarterturn {

// Safe between tags and within an attribute in double quotes: & < > " ' become entities, line ends
// spaces, and what no HTML may hold (control characters, bytes that are no UTF-8) U+FFFD.
std::string html_text(std::string_view text);

// RFC 4648, section 4: with '=' at the end, without line ends.
std::string base64(std::span<const std::byte> bytes);

}  // namespace quarterturn
