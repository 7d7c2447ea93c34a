#pragma once
// What is typed into a search, and whether a text has it, found without the index of words.

#include <cctype>
#include <string>
#include <vector>

namespace quarterturn {

inline const std::vector<std::string> search_vocabulary{"comb",    "Combs",   "leaf", "pin",
                                                        "RÖSCHEN", "roschen", "low"};

inline std::string in_plain_lower(std::string text) {
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text.compare(i, 2, "Ö") == 0) {
            result += 'o';
            ++i;
        } else {
            result += static_cast<char>(std::tolower(text[i]));
        }
    }
    return result;
}

// Words by the plainest rule that is right for the texts of this test: letters A to Z and digits.
inline bool has_word(const std::string& text, const std::string& word) {
    std::string all = ' ' + in_plain_lower(text);
    for (char& c : all) {
        if (!std::isalnum(static_cast<unsigned char>(c))) c = ' ';
    }
    return all.find(' ' + in_plain_lower(word)) != std::string::npos;
}

}  // namespace quarterturn
