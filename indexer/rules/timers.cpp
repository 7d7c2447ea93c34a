#include "indexer/rules/timers.h"

#include <cstdio>
#include <stdexcept>

namespace quarterturn {
namespace {

constexpr std::int64_t minute = 60;
constexpr std::int64_t hour = 60 * minute;

std::string clock_digits(std::int64_t seconds) {
    char digits[32];
    if (seconds >= hour) {
        std::snprintf(digits, sizeof digits, "%lld:%02lld:%02lld",
                      static_cast<long long>(seconds / hour),
                      static_cast<long long>(seconds % hour / minute),
                      static_cast<long long>(seconds % minute));
    } else {
        std::snprintf(digits, sizeof digits, "%lld:%02lld",
                      static_cast<long long>(seconds / minute),
                      static_cast<long long>(seconds % minute));
    }
    return digits;
}

std::string over_text(std::int64_t seconds) {
    if (seconds < minute) return "time is up";
    const std::string minutes = std::to_string(seconds % hour / minute) + " min over";
    return seconds < hour ? minutes : std::to_string(seconds / hour) + " h " + minutes;
}

}  // namespace

std::int64_t time_left(const Timer& timer, std::int64_t now) {
    return timer.ends - now;
}

TimerState timer_state(const Timer& timer, std::int64_t now) {
    const std::int64_t left = time_left(timer, now);
    if (left <= 0) return TimerState::over;
    return left <= last_stretch ? TimerState::last_minute : TimerState::running;
}

std::string time_left_text(const Timer& timer, std::int64_t now) {
    const std::int64_t left = time_left(timer, now);
    return left > 0 ? clock_digits(left) : over_text(-left);
}

std::string timer_name(std::string_view client, std::string_view what) {
    const std::string_view first = client.substr(0, client.find(' '));
    return std::string(first).append(": ").append(what);
}

Timer timer_from(WeddingId wedding, std::string name, int minutes, std::int64_t now) {
    if (name.find_first_not_of(' ') == std::string::npos) {
        throw std::invalid_argument("Name what the timer is for.");
    }
    if (minutes < 1 || minutes > most_timer_minutes) {
        throw std::invalid_argument("A timer runs for 1 to " + std::to_string(most_timer_minutes) +
                                    " minutes.");
    }
    return {{}, wedding, std::move(name), now, now + minutes * minute};
}

}  // namespace quarterturn
