#pragma once
// Looking for words in what she wrote, case aside (ASCII).

#include <initializer_list>
#include <string>
#include <string_view>

namespace quarterturn {

bool blank(std::string_view text);  // nothing but white space
std::string lower(std::string_view text);
bool says_any(std::string_view text, std::initializer_list<std::string_view> sought);
bool says_size(std::string_view text, std::string_view unit);  // "25 mm", "25mm"

}  // namespace quarterturn
