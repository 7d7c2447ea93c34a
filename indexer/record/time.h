#pragma once
// Times as cameras and calendars write them: local wall-clock time without a zone, ISO 8601 as
// text. A capture time keeps the fraction's digits and the offset just as the file gave them
// (EXIF 2.32: DateTimeOriginal, SubSecTimeOriginal, OffsetTimeOriginal).

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace quarterturn {

using LocalTime = std::chrono::local_time<std::chrono::nanoseconds>;
using Date = std::chrono::year_month_day;

struct CaptureTime {
    LocalTime local;
    int fraction_digits = 0;  // how many digits of a second the file gave, at most 9
    std::optional<std::chrono::minutes> utc_offset;

    bool operator==(const CaptureTime&) const = default;
};

// "2026-11-07T10:12:03", and with fraction digits "2026-11-07T10:12:03.61".
std::string iso_text(LocalTime time, int fraction_digits = 0);
std::string iso_text(Date date);                           // "2026-11-07"
std::string offset_text(std::chrono::minutes utc_offset);  // "+01:00"
std::string clock_text(LocalTime time);                    // "10:12"
// " to 12:40", to stand after when it began; empty where it ends in the same minute.
std::string until_text(LocalTime starts, LocalTime ends);

// Each answers nothing when the text is not exactly of the form, or names no real date or time.
// Seconds and fraction are optional. Years are 1678 to 2261: what a LocalTime can hold.
std::optional<LocalTime> parse_local_time(std::string_view iso);
std::optional<Date> parse_date(std::string_view iso);
std::optional<std::chrono::minutes> parse_offset(
    std::string_view text);  // "±HH:MM", at most 14 hours, or "Z"

Date date_of(LocalTime time);

}  // namespace quarterturn
