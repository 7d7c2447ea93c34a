#include "indexer/rules/shorthand/tokens.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "indexer/rules/recipe/plain_words.h"

namespace quarterturn::shorthand {
namespace {

constexpr std::string_view space = " \t\r";
constexpr std::size_t most_digits = 4;
constexpr std::array<std::string_view, 13> number_words{"",     "one",    "two",   "three", "four",
                                                        "five", "six",    "seven", "eight", "nine",
                                                        "ten",  "eleven", "twelve"};

bool digit(char c) {
    return c >= '0' && c <= '9';
}

std::size_t digits_at(std::string_view text, std::size_t from) {
    std::size_t end = from;
    while (end < text.size() && digit(text[end])) ++end;
    return end - from;
}

// How long the number is that `text` begins with: "25", "12.5"; 0 when there is none.
std::size_t number_length(std::string_view text) {
    const std::size_t whole = digits_at(text, 0);
    if (whole == 0 || whole > most_digits) return 0;
    if (whole < text.size() && text[whole] == '.') {
        const std::size_t fraction = digits_at(text, whole + 1);
        if (fraction > most_digits) return 0;
        if (fraction > 0) return whole + 1 + fraction;
    }
    return whole;
}

bool unit_may_follow(std::string_view rest) {
    return std::all_of(rest.begin(), rest.end(), [](char c) {
        return !digit(c) && c != '-' && c != '/' && c != '.' && c != ',';
    });
}

class Cutter {
  public:
    std::vector<Phrase> cut(std::string_view line) && {
        std::size_t at = 0;
        while (at < line.size()) {
            const auto begin = line.find_first_not_of(space, at);
            if (begin == std::string_view::npos) break;
            if (ends_phrase(line, begin)) {
                end_phrase();
                at = begin + 1;
                continue;
            }
            at = begin;
            while (at < line.size() && space.find(line[at]) == std::string_view::npos &&
                   !ends_phrase(line, at)) {
                ++at;
            }
            add_word(line.substr(begin, at - begin));
        }
        end_phrase();
        return std::move(phrases_);
    }

  private:
    static bool ends_phrase(std::string_view line, std::size_t at) {
        const char c = line[at];
        if (c == ';' || c == '\n' || c == '(' || c == ')') return true;
        if (c != ',' && c != '.') return false;
        const bool within_number =
            at > 0 && at + 1 < line.size() && digit(line[at - 1]) && digit(line[at + 1]);
        return !within_number;
    }

    void add_word(std::string_view word) {
        if (word.size() > 1 && (word[0] == 'x' || word[0] == 'X') &&
            number_length(word.substr(1)) == word.size() - 1) {
            add(word.substr(0, 1), false);
            add_number(word.substr(1), true);
            return;
        }
        const std::size_t length = number_length(word);
        if (length == 0 || !unit_may_follow(word.substr(length))) {
            add(word, false);
            return;
        }
        add_number(word.substr(0, length), false);
        if (length < word.size()) add(word.substr(length), true);
    }

    void add(std::string_view text, bool glued) {
        tokens_.push_back({std::string(text), lower(text), std::nullopt, glued, false});
    }
    void add_number(std::string_view text, bool glued) {
        add(text, glued);
        tokens_.back().number = std::stod(std::string(text));
    }
    void end_phrase() {
        if (!tokens_.empty()) phrases_.emplace_back(std::move(tokens_));
        tokens_.clear();
    }

    std::vector<Token> tokens_;
    std::vector<Phrase> phrases_;
};

}  // namespace

bool Phrase::is(std::size_t at, std::initializer_list<std::string_view> words) const {
    return free(at) && std::find(words.begin(), words.end(), tokens_[at].plain) != words.end();
}

std::optional<double> Phrase::number(std::size_t at) const {
    if (!free(at)) return std::nullopt;
    if (tokens_[at].number) return tokens_[at].number;
    if (const auto whole = count(at)) return *whole;
    return std::nullopt;
}

std::optional<int> Phrase::count(std::size_t at) const {
    if (!free(at)) return std::nullopt;
    if (const auto number = tokens_[at].number) {
        return *number == std::floor(*number) ? std::optional{static_cast<int>(*number)}
                                              : std::nullopt;
    }
    const auto found = std::find(number_words.begin() + 1, number_words.end(), tokens_[at].plain);
    if (found == number_words.end()) return std::nullopt;
    return static_cast<int>(found - number_words.begin());
}

std::string Phrase::words(std::size_t from, std::size_t to) const {
    std::string text;
    for (std::size_t at = from; at < to; ++at) {
        if (!text.empty() && !tokens_[at].glued) text += ' ';
        text += tokens_[at].plain;
    }
    return text;
}

void Phrase::use(std::size_t from, std::size_t to) {
    for (std::size_t at = from; at < to; ++at) tokens_[at].used = true;
}

std::vector<Phrase> phrases_of(std::string_view line) {
    return Cutter{}.cut(line);
}

}  // namespace quarterturn::shorthand
