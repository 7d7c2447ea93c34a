#pragma once

#include <string>

namespace quarterturn::demo {

/// "10:04:12.345" to milliseconds since midnight.
int parse_time_of_day(const std::string& text);

/// Milliseconds since midnight to "10:04:12.345".
std::string time_of_day(int millisecond);

/// The camera's clock is this much off; the phone sets itself.
inline constexpr int camera_clock_offset_seconds = -47 * 60;

}  // namespace quarterturn::demo
