#pragma once
// The three EXIF tags that together say when a photo was taken (EXIF 2.32, CIPA
// DC-008-2019, 4.6.5).

#include <optional>
#include <string_view>

#include "indexer/record/time.h"

namespace quarterturn {

// `date_time` as "YYYY:MM:DD HH:MM:SS"; `fraction` the digits of SubSecTime…, of which blanks
// around and all beyond nine are dropped; `offset` as "±HH:MM". Nothing when `date_time` is blank,
// zeros, or no real date. A fraction or offset that cannot be read is left out.
std::optional<CaptureTime> exif_capture_time(std::string_view date_time, std::string_view fraction,
                                             std::string_view offset);

// Without blanks and zero bytes before and after.
std::string_view trim_blanks(std::string_view text);

}  // namespace quarterturn
