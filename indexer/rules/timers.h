#pragma once
// The timers of the board: how much is left, or how long it has been over. `now` is in seconds
// since 1970 in UTC, as the timers are.

#include <cstdint>
#include <string>
#include <string_view>

#include "indexer/record/board.h"

namespace quarterturn {

inline constexpr int most_timer_minutes = 10 * 60;  // longer than any morning
inline constexpr int last_stretch = 60;             // seconds that are told apart before the end

enum class TimerState { running, last_minute, over };

TimerState timer_state(const Timer& timer, std::int64_t now);

// Seconds; negative once it is over.
std::int64_t time_left(const Timer& timer, std::int64_t now);

// "12:05", "1:02:05"; once it is over "time is up", then "2 min over", "1 h 5 min over".
std::string time_left_text(const Timer& timer, std::int64_t now);

// "Ysolde: cooling", of the client's first name as it is kept.
std::string timer_name(std::string_view client, std::string_view what);

// Throws std::invalid_argument with a sentence where the name is empty, or the minutes are not 1 to
// most_timer_minutes.
Timer timer_from(WeddingId wedding, std::string name, int minutes, std::int64_t now);

}  // namespace quarterturn
