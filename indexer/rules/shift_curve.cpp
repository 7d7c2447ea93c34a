#include "indexer/rules/shift_curve.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdlib>

namespace quarterturn {
namespace {

using std::chrono::minutes;

using MinuteNumber = std::int64_t;

constexpr minutes blur{2};

// The minutes in which anything was taken, each once.
std::vector<MinuteNumber> minutes_of(const std::vector<LocalTime>& moments) {
    std::vector<MinuteNumber> numbers;
    for (const LocalTime moment : moments) {
        numbers.push_back(std::chrono::floor<minutes>(moment).time_since_epoch().count());
    }
    std::sort(numbers.begin(), numbers.end());
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    return numbers;
}

// How often a minute of the one is a minute of the other with each shift.
ShiftCurve meetings_curve(const std::vector<MinuteNumber>& minute_numbers,
                          const std::vector<MinuteNumber>& others) {
    ShiftCurve meetings;
    for (const MinuteNumber minute : minute_numbers) {
        auto other = std::lower_bound(others.begin(), others.end(), minute - shift_reach);
        for (; other != others.end() && *other <= minute + shift_reach; ++other) {
            meetings.add(static_cast<int>(*other - minute), 1);
        }
    }
    return meetings;
}

ShiftCurve blurred(const ShiftCurve& curve) {
    constexpr std::array weights{1.0, 0.88, 0.61, 0.32, 0.14, 0.04};  // a Gaussian of `blur`
    constexpr int width = static_cast<int>(weights.size());
    ShiftCurve result;
    for (int shift = -shift_reach; shift <= shift_reach; ++shift) {
        for (int away = 1 - width; away < width; ++away) {
            const double weight = weights[static_cast<std::size_t>(std::abs(away))];
            result.add(shift, curve.at(shift + away) * weight);
        }
    }
    return result;
}

ShiftCurve summed(const ShiftCurve& steps) {
    ShiftCurve result;
    double sum = 0;
    for (int shift = -shift_reach; shift <= shift_reach; ++shift) {
        sum += steps.at(shift);
        result.add(shift, sum);
    }
    return result;
}

using Seconds = std::chrono::duration<double>;

// How far, on the whole, the others nearby lie after the moments with this shift.
Seconds mean_lag(const std::vector<LocalTime>& moments, const std::vector<LocalTime>& others,
                 Seconds shift) {
    constexpr minutes nearby{5};
    double sum = 0;
    double weights = 0;
    for (const LocalTime own : moments) {
        const auto moment = own + std::chrono::round<std::chrono::nanoseconds>(shift);
        auto other = std::lower_bound(others.begin(), others.end(), moment - nearby);
        for (; other != others.end() && *other <= moment + nearby; ++other) {
            const double lag = Seconds{*other - moment}.count();
            const double weight = std::exp(-0.5 * std::pow(lag / Seconds{blur}.count(), 2));
            sum += weight * lag;
            weights += weight;
        }
    }
    return Seconds{weights > 0 ? sum / weights : 0.0};
}

}  // namespace

ShiftCurve fit_curve(const std::vector<LocalTime>& moments, const SittingHours& hours) {
    constexpr minutes reach{shift_reach};
    ShiftCurve steps;
    for (const LocalTime moment : moments) {
        for (const TimeSpan& span : hours.between(moment - reach, moment + reach)) {
            const auto first = std::max(-reach, std::chrono::ceil<minutes>(span.from - moment));
            const auto last = std::min(reach, std::chrono::floor<minutes>(span.to - moment));
            if (first > last) continue;
            steps.add(static_cast<int>(first.count()), 1);
            steps.add(static_cast<int>(last.count()) + 1, -1);
        }
    }
    return summed(steps);
}

ShiftCurve likeness_curve(const std::vector<LocalTime>& moments,
                          const std::vector<LocalTime>& others) {
    return blurred(meetings_curve(minutes_of(moments), minutes_of(others)));
}

int sharpened(const std::vector<LocalTime>& moments, const std::vector<LocalTime>& others,
              int about) {
    constexpr int rounds = 8;  // it settles within a few
    Seconds shift = minutes{about};
    for (int round = 0; round < rounds; ++round) shift += mean_lag(moments, others, shift);
    return static_cast<int>(std::chrono::round<minutes>(shift).count());
}

}  // namespace quarterturn
