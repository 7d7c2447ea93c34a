#include "indexer/record/time.h"

#include <array>
#include <charconv>
#include <cstdio>

namespace quarterturn {
namespace {

using namespace std::chrono;

// No place on earth is further from UTC.
constexpr hours furthest_from_utc{14};

// Reads exactly `digits` decimal digits from the front of `text` and drops them.
std::optional<int> take_number(std::string_view& text, std::size_t digits) {
    if (text.size() < digits) return std::nullopt;
    int value = 0;
    for (const char c : text.substr(0, digits)) {
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    text.remove_prefix(digits);
    return value;
}

bool take_char(std::string_view& text, char wanted) {
    if (text.empty() || text.front() != wanted) return false;
    text.remove_prefix(1);
    return true;
}

std::optional<Date> take_date(std::string_view& text) {
    const auto y = take_number(text, 4);
    if (!y || !take_char(text, '-')) return std::nullopt;
    const auto m = take_number(text, 2);
    if (!m || !take_char(text, '-')) return std::nullopt;
    const auto d = take_number(text, 2);
    if (!d) return std::nullopt;
    const Date date{year{*y}, month{static_cast<unsigned>(*m)}, day{static_cast<unsigned>(*d)}};
    return date.ok() ? std::optional{date} : std::nullopt;
}

// 64 bits of nanoseconds around 1970 hold these years whole.
bool within_reach(Date date) {
    return date.year() >= year{1678} && date.year() <= year{2261};
}

// What stands after the seconds' point: at least one digit; more than nine are dropped.
std::optional<nanoseconds> take_fraction(std::string_view& text) {
    std::int64_t value = 0;
    int digits = 0;
    while (!text.empty() && text.front() >= '0' && text.front() <= '9') {
        if (digits < 9) value = value * 10 + (text.front() - '0');
        ++digits;
        text.remove_prefix(1);
    }
    if (digits == 0) return std::nullopt;
    for (int i = digits; i < 9; ++i) value *= 10;
    return nanoseconds{value};
}

}  // namespace

std::string iso_text(Date date) {
    std::array<char, 32> text{};
    const int length =
        std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                      static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return {text.data(), static_cast<std::size_t>(length)};
}

std::string iso_text(LocalTime time, int fraction_digits) {
    const auto day_start = floor<days>(time);
    const hh_mm_ss<nanoseconds> clock{time - day_start};
    std::array<char, 48> text{};
    const int length = std::snprintf(
        text.data(), text.size(), "T%02d:%02d:%02d", static_cast<int>(clock.hours().count()),
        static_cast<int>(clock.minutes().count()), static_cast<int>(clock.seconds().count()));
    std::string result = iso_text(Date{day_start});
    result.append(text.data(), static_cast<std::size_t>(length));
    if (fraction_digits <= 0) return result;
    const int fraction_length = std::snprintf(text.data(), text.size(), "%09lld",
                                              static_cast<long long>(clock.subseconds().count()));
    const std::string fraction(text.data(), static_cast<std::size_t>(fraction_length));
    return result + '.' + fraction.substr(0, static_cast<std::size_t>(fraction_digits));
}

std::string offset_text(minutes utc_offset) {
    const auto total = static_cast<int>(utc_offset.count());
    const int size = total < 0 ? -total : total;
    std::array<char, 32> text{};
    const int length = std::snprintf(text.data(), text.size(), "%c%02d:%02d", total < 0 ? '-' : '+',
                                     size / 60, size % 60);
    return {text.data(), static_cast<std::size_t>(length)};
}

std::string clock_text(LocalTime time) {
    return iso_text(time).substr(11, 5);
}

std::string until_text(LocalTime starts, LocalTime ends) {
    const bool same = std::chrono::floor<std::chrono::minutes>(starts) ==
                      std::chrono::floor<std::chrono::minutes>(ends);
    return same ? std::string() : " to " + clock_text(ends);
}

std::optional<Date> parse_date(std::string_view iso) {
    const auto date = take_date(iso);
    return iso.empty() ? date : std::nullopt;
}

std::optional<LocalTime> parse_local_time(std::string_view iso) {
    const auto date = take_date(iso);
    if (!date || !within_reach(*date)) return std::nullopt;
    if (!take_char(iso, 'T') && !take_char(iso, ' ')) return std::nullopt;
    const auto h = take_number(iso, 2);
    if (!h || *h > 23 || !take_char(iso, ':')) return std::nullopt;
    const auto m = take_number(iso, 2);
    if (!m || *m > 59) return std::nullopt;
    LocalTime time = LocalTime{local_days{*date}} + hours{*h} + minutes{*m};
    if (iso.empty()) return time;
    if (!take_char(iso, ':')) return std::nullopt;
    const auto s = take_number(iso, 2);
    if (!s || *s > 59) return std::nullopt;
    time += seconds{*s};
    if (iso.empty()) return time;
    if (!take_char(iso, '.')) return std::nullopt;
    const auto fraction = take_fraction(iso);
    if (!fraction || !iso.empty()) return std::nullopt;
    return time + *fraction;
}

std::optional<minutes> parse_offset(std::string_view text) {
    if (text == "Z") return minutes{0};
    const bool behind = take_char(text, '-');
    if (!behind && !take_char(text, '+')) return std::nullopt;
    const auto h = take_number(text, 2);
    if (!h || !take_char(text, ':')) return std::nullopt;
    const auto m = take_number(text, 2);
    if (!m || *m > 59 || !text.empty()) return std::nullopt;
    const minutes size{*h * 60 + *m};
    if (size > furthest_from_utc) return std::nullopt;
    return behind ? -size : size;
}

Date date_of(LocalTime time) {
    return Date{floor<days>(time)};
}

}  // namespace quarterturn
