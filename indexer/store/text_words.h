#pragma once
// The words of a text in any script: runs of letters, marks and digits.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace quarterturn {

struct TextWord {
    std::size_t begin = 0;  // in bytes
    std::size_t end = 0;
    std::string plain;  // case folded, without accents: "Vašnovič" is "vasnovic"
    // A name may go on there: before it by a hyphen or an apostrophe, as in "O'Neill", behind it by
    // a hyphen ("Ada's" is Ada).
    bool joined_before = false;
    bool joined_behind = false;
};

std::vector<TextWord> words_in(std::string_view text);

// Case folded, without accents (ICU's Latin-ASCII, and marks that are inherited).
std::string plain_letters(std::string_view text);

// Whether words run on in its script (line breaking classes ID, CJ, SA and Hangul of UAX #14), so
// that where one ends cannot be told.
bool runs_on(std::string_view text);

// Whether both hold one word of three letters or more, whatever its case and accents.
bool share_a_word(std::string_view one, std::string_view other);

}  // namespace quarterturn
