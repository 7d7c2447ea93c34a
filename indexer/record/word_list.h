#pragma once
// Lists of words for the fixed vocabularies.

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace quarterturn {

template <class Value, std::size_t N>
using WordList = std::array<std::pair<Value, std::string_view>, N>;

inline std::string plain_word(std::string_view text) {
    std::string result(text);
    for (char& c : result) {
        if (c == '-' || c == '_') c = ' ';
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return result;
}

template <class Value, std::size_t N>
std::string_view find_word(const WordList<Value, N>& list, Value value) {
    const auto found = std::find_if(list.begin(), list.end(),
                                    [&](const auto& entry) { return entry.first == value; });
    return found == list.end() ? std::string_view{} : found->second;
}

template <class Value, std::size_t N>
std::optional<Value> find_value(const WordList<Value, N>& list, std::string_view text) {
    const std::string wanted = plain_word(text);
    for (const auto& [value, name] : list) {
        if (plain_word(name) == wanted) return value;
    }
    return std::nullopt;
}

}  // namespace quarterturn
