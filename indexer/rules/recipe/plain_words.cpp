#include "indexer/rules/recipe/plain_words.h"

#include <algorithm>

namespace quarterturn {

bool blank(std::string_view text) {
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

std::string lower(std::string_view text) {
    std::string result(text);
    for (char& c : result) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return result;
}

bool says_any(std::string_view text, std::initializer_list<std::string_view> sought) {
    const std::string plain = lower(text);
    return std::any_of(sought.begin(), sought.end(), [&](std::string_view word) {
        return plain.find(word) != std::string::npos;
    });
}

bool says_size(std::string_view text, std::string_view unit) {
    const std::string plain = lower(text);
    for (auto at = plain.find(unit); at != std::string::npos; at = plain.find(unit, at + 1)) {
        const auto before = plain.substr(0, at).find_last_not_of(' ');
        if (before != std::string::npos && plain[before] >= '0' && plain[before] <= '9')
            return true;
    }
    return false;
}

}  // namespace quarterturn
