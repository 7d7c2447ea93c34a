#include "indexer/rules/plain_words.h"

#include <algorithm>
#include <array>
#include <utility>

namespace quarterturn {
namespace {

constexpr std::array<std::string_view, 4> denials{"no", "not", "without", "nor"};

bool is_denial(const std::string& word) {
    return std::ranges::find(denials, word) != denials.end();
}

char plain_letter(char c) {
    if (c >= 'A' && c <= 'Z') return static_cast<char>(c - 'A' + 'a');
    const bool part_of_a_word =
        (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
    return part_of_a_word ? c : ' ';
}

}  // namespace

PlainWords::PlainWords(std::string_view text) {
    std::string word;
    const auto end_word = [&] {
        if (!word.empty()) words_.push_back(std::exchange(word, {}));
    };
    for (const char c : text) {
        const char letter = plain_letter(c);
        if (letter == ' ') {
            end_word();
        } else {
            word += letter;
        }
    }
    end_word();
}

std::string PlainWords::text() const {
    std::string text;
    for (const std::string& word : words_) {
        if (!text.empty()) text += ' ';
        text += word;
    }
    return text;
}

bool PlainWords::take(std::string_view phrase) {
    const std::vector<std::string> wanted = PlainWords(phrase).words_;
    if (wanted.empty()) return false;
    bool found = false;
    for (auto at = words_.begin();;) {
        const auto place = std::search(at, words_.end(), wanted.begin(), wanted.end());
        if (place == words_.end()) return found;
        const bool denied = place != words_.begin() && is_denial(*(place - 1));
        found = found || !denied;
        at = place + static_cast<std::ptrdiff_t>(wanted.size());
        std::fill(place, at, std::string{});
    }
}

bool PlainWords::say_in_order(std::string_view phrase, int others_between) const {
    const std::vector<std::string> wanted = PlainWords(phrase).words_;
    if (wanted.empty()) return false;
    const auto follows = [&](std::size_t begin) {
        std::size_t at = begin;
        for (std::size_t i = 1; i < wanted.size(); ++i) {
            const std::size_t last = std::min(words_.size(), at + 2 + others_between);
            std::size_t next = at + 1;
            while (next < last && words_[next] != wanted[i]) ++next;
            if (next >= last) return false;
            at = next;
        }
        return true;
    };
    for (std::size_t i = 0; i < words_.size(); ++i) {
        if (words_[i] == wanted.front() && follows(i)) return true;
    }
    return false;
}

}  // namespace quarterturn
