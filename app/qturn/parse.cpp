#include "app/qturn/parse.h"

#include <charconv>

#include "app/qturn/reply.h"
#include "app/qturn/say.h"

namespace quarterturn {
namespace {

constexpr std::array all_sitting_kinds{SittingKind::consultation, SittingKind::trial,
                                       SittingKind::wedding_day, SittingKind::model_shoot};
constexpr std::array all_ways_to_give{HowGiven::signed_form, HowGiven::message, HowGiven::spoken};
constexpr std::array all_worn{Worn::ceremony, Worn::evening, Worn::other};

template <class Values>
std::string known_words(const Values& values) {
    std::vector<std::string> words;
    for (const auto value : values) words.emplace_back(word(value));
    return joined(words);
}

template <class Value, class Values>
Value value_or_complain(const std::optional<Value>& value, const std::string& text,
                        const std::string& what, const Values& known) {
    if (value) return *value;
    throw WrongUse("'" + text + "' is no " + what + ". Known are " + known_words(known) + ".");
}

bool is_number(const std::string& text) {
    return !text.empty() && text.size() <= 2 &&
           text.find_first_not_of("0123456789") == std::string::npos;
}

std::vector<std::string> split(const std::string& text, char at) {
    std::vector<std::string> parts{""};
    for (const char c : text) {
        if (c == at) {
            parts.emplace_back();
        } else {
            parts.back() += c;
        }
    }
    return parts;
}

}  // namespace

Angle angle_from(const std::string& text) {
    return value_or_complain(parse_angle(text), text, "angle", all_angles);
}

Stage stage_from(const std::string& text) {
    return value_or_complain(parse_stage(text), text, "stage", all_stages);
}

SittingKind sitting_kind_from(const std::string& text) {
    return value_or_complain(parse_sitting_kind(text), text, "kind of sitting", all_sitting_kinds);
}

Worn worn_from(const std::string& text) {
    return value_or_complain(parse_worn(text), text, "time a look is worn", all_worn);
}

Shot shot_from(const std::string& text) {
    const std::size_t stage_end = text.find_first_of(", ");
    const std::size_t angle_start =
        stage_end == std::string::npos ? stage_end : text.find_first_not_of(", ", stage_end);
    if (angle_start == std::string::npos) {
        throw WrongUse("'" + text +
                       "' is no shot. Name a stage and an angle, as in 'after, left'.");
    }
    return {stage_from(text.substr(0, stage_end)), angle_from(text.substr(angle_start))};
}

Paper paper_from(const std::string& text) {
    return value_or_complain(parse_paper(text), text, "paper size", all_papers);
}

Use use_from(const std::string& text) {
    if (const auto use = parse_use(text)) return *use;
    throw WrongUse("'" + text + "' is not one of the uses: " + known_words(all_uses) + ".");
}

AgeBand age_band_from(const std::string& text) {
    return value_or_complain(parse_age_band(text), text, "age", all_age_bands);
}

HowGiven how_given_from(const std::string& text) {
    return value_or_complain(parse_how_given(text), text, "way to give or withdraw consent",
                             all_ways_to_give);
}

Date date_from(const std::string& text) {
    if (const auto date = parse_date(text)) return *date;
    throw WrongUse("'" + text + "' is no date. Write year, month and day, as in 2026-11-07.");
}

LocalTime time_from(const std::string& text) {
    if (const auto time = parse_local_time(text)) return *time;
    throw WrongUse("'" + text + "' is no date and time. Write it as in 2026-11-07T10:12.");
}

std::string clock_from(const std::string& text) {
    if (parse_local_time("2000-01-01T" + text) && text.size() == 5) return text;
    throw WrongUse("'" + text + "' is no time of day. Write hours and minutes, as in 12:30.");
}

std::chrono::seconds shift_from(const std::string& text) {
    const bool has_sign = text.starts_with('-') || text.starts_with('+');
    const auto parts = split(text.substr(has_sign ? 1 : 0), ':');
    const bool well_formed =
        (parts.size() == 2 || parts.size() == 3) &&
        std::all_of(parts.begin(), parts.end(), is_number) &&
        std::all_of(parts.begin() + 1, parts.end(),
                    [](const std::string& part) { return std::stoi(part) < 60; });
    if (!well_formed) {
        throw WrongUse("'" + text + "' is no shift. Write hours and minutes, as in +00:47.");
    }
    auto shift = std::chrono::seconds{0};
    for (const std::string& part : parts)
        shift = shift * 60 + std::chrono::seconds{std::stoi(part)};
    if (parts.size() == 2) shift *= 60;
    return text.starts_with('-') ? -shift : shift;
}

Named named(const std::string& text) {
    const std::size_t at = text.rfind('=');
    if (at == std::string::npos) return {"", text};
    return {text.substr(0, at), text.substr(at + 1)};
}

int jpeg_quality_from(std::optional<int> quality, int usual) {
    const int value = quality.value_or(usual);
    if (value >= 1 && value <= 100) return value;
    throw WrongUse("The quality of a JPEG is a number from 1 to 100.");
}

int number_from(const std::string& text, const std::string& whole) {
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error == std::errc{} && end == text.data() + text.size() && number >= 0) return number;
    throw WrongUse("'" + whole + "' holds no number where one is needed: write it as in the help.");
}

}  // namespace quarterturn
