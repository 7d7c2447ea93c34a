#include "indexer/record/morning.h"

#include "indexer/record/time.h"

namespace quarterturn {

std::string minute_text(int minute) {
    constexpr int day = 24 * 60;
    const int of_day = (minute % day + day) % day;
    std::string text = clock_text(LocalTime{} + std::chrono::minutes{of_day});
    if (minute < 0) text += " the day before";
    if (minute >= day) text += " the next day";
    return text;
}

std::optional<int> parse_minute(std::string_view clock) {
    if (clock.size() != std::string_view("07:40").size()) return std::nullopt;
    const auto time = parse_local_time("1970-01-01T" + std::string(clock));
    if (!time) return std::nullopt;
    return static_cast<int>(
        std::chrono::floor<std::chrono::minutes>(time->time_since_epoch()).count());
}

}  // namespace quarterturn
