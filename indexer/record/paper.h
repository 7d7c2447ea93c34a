#pragma once
// The sizes of paper that pages are laid out for.

#include <array>
#include <optional>
#include <string_view>

namespace quarterturn {

enum class Paper { a3, a4, a5, letter };  // ISO 216; US Letter 8.5 × 11 in

inline constexpr std::array all_papers{Paper::a4, Paper::a3, Paper::a5, Paper::letter};

std::string_view word(Paper paper);                       // "a4"
std::optional<Paper> parse_paper(std::string_view text);  // case does not matter

}  // namespace quarterturn
