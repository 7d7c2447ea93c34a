#include "indexer/rules/suggestion.h"

#include <set>
#include <vector>

namespace quarterturn {
namespace {

using Tokens = std::vector<std::string>;

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
bool is_upper(char c) {
    return c >= 'A' && c <= 'Z';
}
bool is_lower(char c) {
    return c >= 'a' && c <= 'z';
}
// Bytes of letters beyond ASCII belong to the word they stand in.
bool is_letter(char c) {
    return is_upper(c) || is_lower(c) || static_cast<unsigned char>(c) >= 0x80;
}

char lower(char c) {
    return is_upper(c) ? static_cast<char>(c - 'A' + 'a') : c;
}

// "leftBack" and "left2" each hold two words.
bool words_part_between(char before, char after) {
    return is_digit(before) != is_digit(after) || (is_lower(before) && is_upper(after));
}

Tokens words_of(std::string_view text) {
    Tokens words;
    char before = ' ';
    for (const char c : text) {
        const bool in_word = is_letter(c) || is_digit(c);
        const bool was_in_word = is_letter(before) || is_digit(before);
        if (in_word && (!was_in_word || words_part_between(before, c))) words.emplace_back();
        if (in_word) words.back() += lower(c);
        before = c;
    }
    return words;
}

std::string replaced(std::string_view text, std::string_view sought, std::string_view by) {
    std::string result;
    while (true) {
        const auto at = text.find(sought);
        result += text.substr(0, at);
        if (at == std::string_view::npos) return result;
        result += by;
        text.remove_prefix(at + sought.size());
    }
}

bool is_number(const std::string& token) {
    return is_digit(token.front());
}

// "3" followed by "4" says three-quarter, but "2026-3-4" is a date.
bool is_three_four(const Tokens& words, std::size_t at) {
    if (at + 1 >= words.size() || words[at] != "3" || words[at + 1] != "4") return false;
    const bool number_before = at > 0 && is_number(words[at - 1]);
    const bool number_after = at + 2 < words.size() && is_number(words[at + 2]);
    return !number_before && !number_after;
}

bool is_three_quarter(const Tokens& words, std::size_t at) {
    if (is_three_four(words, at)) return true;
    if (at + 1 >= words.size()) return false;
    return (words[at] == "three" || words[at] == "3") && words[at + 1] == "quarter";
}

// Every way of writing three-quarter becomes the one word "34quarter", which no text gives.
constexpr std::string_view three_quarter_word = "34quarter";

Tokens with_three_quarters_joined(const Tokens& words) {
    Tokens joined;
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (is_three_quarter(words, at)) {
            joined.emplace_back(three_quarter_word);
            ++at;
        } else if (words[at] == "threequarter") {
            joined.emplace_back(three_quarter_word);
        } else {
            joined.push_back(words[at]);
        }
    }
    return joined;
}

bool holds(const Tokens& words, std::size_t at, std::string_view wanted) {
    return at < words.size() && words[at] == wanted;
}

// "left 34" may be the left three-quarter or the 34th photo of the left.
bool unclear_number_beside(const Tokens& words, std::size_t at) {
    return holds(words, at + 1, "34") || (at > 0 && words[at - 1] == "34");
}

void read_side(const Tokens& words, std::size_t at, std::set<Angle>& said) {
    const bool left = words[at] == "left";
    const Angle side = left ? Angle::left : Angle::right;
    const Angle three_quarter = left ? Angle::left_three_quarter : Angle::right_three_quarter;
    const bool joined =
        holds(words, at + 1, three_quarter_word) || (at > 0 && words[at - 1] == three_quarter_word);
    said.insert(joined ? three_quarter : side);
    if (unclear_number_beside(words, at)) said.insert(three_quarter);
}

std::set<Angle> angles_in(std::string_view text) {
    const Tokens words = with_three_quarters_joined(words_of(replaced(text, "\u00be", " 3 4 ")));
    std::set<Angle> said;
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (words[at] == "left" || words[at] == "right") {
            read_side(words, at, said);
        } else if (const auto angle = parse_angle(words[at])) {
            said.insert(*angle);
        }
    }
    return said;
}

std::string_view without_ending(std::string_view file_name) {
    const auto dot = file_name.rfind('.');
    return dot == std::string_view::npos || dot == 0 ? file_name : file_name.substr(0, dot);
}

// From the client's left side her face looks to the viewer's left; a mirror shows it the other way.
std::optional<Angle> angle_of_face(const HeadSigns& signs, bool in_a_mirror) {
    if (signs.frontal_face) return Angle::front;
    if (signs.profile_to_left == signs.profile_to_right) return std::nullopt;
    const Angle seen = signs.profile_to_left ? Angle::left : Angle::right;
    return in_a_mirror ? mirrored(seen) : seen;
}

}  // namespace

std::optional<AngleSuggestion> suggest_angle(std::string_view file_name,
                                             std::span<const std::string> keywords) {
    std::set<Angle> said;
    std::string source;
    for (const std::string& keyword : keywords) {
        const auto angles = angles_in(keyword);
        if (!angles.empty() && source.empty()) source = "keyword '" + keyword + "'";
        said.insert(angles.begin(), angles.end());
    }
    if (said.empty()) {
        said = angles_in(without_ending(file_name));
        source = "file name";
    }
    if (said.size() != 1) return std::nullopt;
    return AngleSuggestion{*said.begin(), source};
}

std::optional<AngleSuggestion> suggest_angle(const Photo& photo) {
    if (photo.suggestion.angle) {
        return AngleSuggestion{*photo.suggestion.angle, photo.suggestion.angle_source};
    }
    if (!photo.head_signs) return std::nullopt;
    const auto angle = angle_of_face(*photo.head_signs, photo.tags.mirrored);
    if (!angle) return std::nullopt;
    return AngleSuggestion{*angle, "face in the picture"};
}

}  // namespace quarterturn
