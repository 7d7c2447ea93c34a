#include "indexer/metadata/capture_time.h"

#include <algorithm>
#include <string>

namespace quarterturn {
namespace {

constexpr std::string_view blanks{" \t\r\n\0", 5};
constexpr std::size_t most_fraction_digits = 9;

// "2026:11:07 10:12:03" as "2026-11-07 10:12:03". Dashes in the date, which some programs write,
// stay.
std::string iso_form(std::string_view date_time) {
    std::string iso{date_time};
    for (const std::size_t dash : {std::size_t{4}, std::size_t{7}}) {
        if (iso.size() > dash && iso[dash] == ':') iso[dash] = '-';
    }
    return iso;
}

std::string_view leading_digits(std::string_view text) {
    return text.substr(0, std::min(text.find_first_not_of("0123456789"), text.size()));
}

}  // namespace

std::string_view trim_blanks(std::string_view text) {
    const auto first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::optional<CaptureTime> exif_capture_time(std::string_view date_time, std::string_view fraction,
                                             std::string_view offset) {
    const std::string digits{leading_digits(trim_blanks(fraction)).substr(0, most_fraction_digits)};
    std::string iso = iso_form(trim_blanks(date_time));
    // With seconds and without a fraction of its own, or it is not of the EXIF form.
    constexpr std::size_t exif_length = 19;
    if (iso.size() != exif_length) return std::nullopt;
    if (!digits.empty()) iso += '.' + digits;
    const auto local = parse_local_time(iso);
    if (!local) return std::nullopt;
    return CaptureTime{*local, static_cast<int>(digits.size()), parse_offset(trim_blanks(offset))};
}

}  // namespace quarterturn
