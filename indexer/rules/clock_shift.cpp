#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "indexer/rules/shift_curve.h"
#include "indexer/rules/sitting_hours.h"
#include "indexer/rules/sorting.h"

namespace quarterturn {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using Moments = std::vector<LocalTime>;

constexpr int reach_alone = 14 * 60;  // minutes
constexpr minutes beside_gap{5};
constexpr int fewest_beside = 3;
// A second shift this good, and not merely next to the best, leaves the matter open.
constexpr double rival_share = 0.8;
constexpr int same_peak = 10;  // minutes
// A clock is rarely wrong by 58 minutes and often by an hour.
constexpr int near_an_hour = 5;  // minutes

Moments moments_of(const DevicePhotos& device) {
    Moments moments;
    for (const TimedPhoto& photo : device.photos) moments.push_back(photo.moment);
    return moments;
}

int fitting(const Moments& moments, seconds shift, const SittingHours& hours) {
    return static_cast<int>(std::count_if(moments.begin(), moments.end(), [&](LocalTime moment) {
        return hours.hold(moment + shift);
    }));
}

// One device being judged.
struct Case {
    DeviceId device;
    seconds today;    // the shift it has
    Moments moments;  // by its own clock
    Moments others;   // true ones of other devices, in order
    int fit_now = 0;
    ShiftCurve fits;
    ShiftCurve likeness;

    int photos() const { return static_cast<int>(moments.size()); }
    int enough() const { return photos() - photos() / 10; }
    // Whether the shift makes enough photos fit, and more than today.
    bool helps(int shift) const { return fits.at(shift) >= enough() && fits.at(shift) > fit_now; }
};

bool any_within(const Moments& sorted, LocalTime from, LocalTime to) {
    const auto first = std::lower_bound(sorted.begin(), sorted.end(), from);
    return first != sorted.end() && *first <= to;
}

int beside_others(const Case& at_hand, int shift) {
    return static_cast<int>(
        std::count_if(at_hand.moments.begin(), at_hand.moments.end(), [&](LocalTime own) {
            const LocalTime moment = own + minutes{shift};
            return any_within(at_hand.others, moment - beside_gap, moment + beside_gap);
        }));
}

// How many would lie in a sitting at which another device took photos too.
int in_company(const Case& at_hand, int shift, const SittingHours& hours) {
    return static_cast<int>(
        std::count_if(at_hand.moments.begin(), at_hand.moments.end(), [&](LocalTime own) {
            const LocalTime moment = own + minutes{shift};
            const auto spans = hours.between(moment, moment);
            return !spans.empty() &&
                   any_within(at_hand.others, spans.front().from, spans.front().to);
        }));
}

std::optional<int> likeliest_shift(const Case& at_hand) {
    std::optional<int> best;
    for (int shift = -shift_reach; shift <= shift_reach; ++shift) {
        if (!at_hand.helps(shift)) continue;
        const double least = best ? at_hand.likeness.at(*best) : 0.0;
        if (at_hand.likeness.at(shift) > least) best = shift;
    }
    if (!best) return best;
    const int sharp = sharpened(at_hand.moments, at_hand.others, *best);
    return at_hand.helps(sharp) ? sharp : best;
}

bool has_rival(const Case& at_hand, int best) {
    const double rival = rival_share * at_hand.likeness.at(best);
    const auto today = std::chrono::round<minutes>(at_hand.today).count();
    if (at_hand.likeness.at(static_cast<int>(today)) >= rival) return true;
    for (int shift = -shift_reach; shift <= shift_reach; ++shift) {
        const bool apart = std::abs(shift - best) > same_peak;
        if (apart && at_hand.helps(shift) && at_hand.likeness.at(shift) >= rival) return true;
    }
    return false;
}

int nearest_hour(int shift) {
    return static_cast<int>(std::lround(static_cast<double>(shift) / 60.0)) * 60;
}

int rounded_to_hour(const Case& at_hand, int best) {
    const int hour = nearest_hour(best);
    const bool as_good = std::abs(hour - best) <= near_an_hour && at_hand.helps(hour) &&
                         at_hand.likeness.at(hour) >= rival_share * at_hand.likeness.at(best);
    return as_good ? hour : best;
}

std::string count_text(int count, int photos) {
    if (count == photos) return "all " + std::to_string(photos);
    return std::to_string(count) + " of " + std::to_string(photos);
}

std::string today_text(const Case& at_hand) {
    if (at_hand.fit_now == 0) {
        return "none of its " + std::to_string(at_hand.photos()) + " photos falls in a sitting";
    }
    return "only " + count_text(at_hand.fit_now, at_hand.photos()) + " photos fall in a sitting";
}

std::string change_text(int shift) {
    if (shift == 0) return "with its clock as it is";
    return "with " + shift_size_text(minutes{shift}) + (shift > 0 ? " added" : " taken off");
}

ClockShift proposal(const Case& at_hand, int shift, const std::string& evidence = {}) {
    const int fit_then = static_cast<int>(at_hand.fits.at(shift));
    const std::string because = "As it is, " + today_text(at_hand) + "; " + change_text(shift) +
                                ", " + count_text(fit_then, at_hand.photos()) + " do" + evidence +
                                ". Two photos of one moment by two devices would tell it exactly.";
    return {at_hand.device, minutes{shift}, because, at_hand.photos(), at_hand.fit_now, fit_then};
}

struct Agreement {
    bool told = false;  // the other devices have something to say of it
    std::optional<ClockShift> shift;
};

Agreement judge_by_others(const Case& at_hand, const SittingHours& hours) {
    const auto best = likeliest_shift(at_hand);
    if (!best || beside_others(at_hand, *best) < fewest_beside) return {};
    const bool most_beside = 2 * beside_others(at_hand, *best) >= in_company(at_hand, *best, hours);
    if (!most_beside || has_rival(at_hand, *best)) return {true, std::nullopt};
    const int shift = rounded_to_hour(at_hand, *best);
    return {true, proposal(at_hand, shift,
                           ", and " + std::to_string(beside_others(at_hand, shift)) +
                               " then stand within " + std::to_string(beside_gap.count()) +
                               " minutes of another device's photos")};
}

struct Run {
    int first = 0;
    int last = 0;
};

// The shifts with which every photo fits, as runs of neighbours.
std::vector<Run> runs_that_fit(const Case& at_hand) {
    std::vector<Run> runs;
    for (int shift = -reach_alone; shift <= reach_alone; ++shift) {
        if (at_hand.fits.at(shift) < at_hand.photos()) continue;
        if (runs.empty() || runs.back().last + 1 < shift) runs.push_back({shift, shift});
        runs.back().last = shift;
    }
    return runs;
}

int smallest_shift(const Run& run) {
    return std::abs(run.first) < std::abs(run.last) ? run.first : run.last;
}

std::optional<int> smallest_hour(const Run& run) {
    std::optional<int> smallest;
    for (int hour = nearest_hour(run.first); hour <= run.last; hour += 60) {
        if (hour < run.first) continue;
        if (!smallest || std::abs(hour) < std::abs(*smallest)) smallest = hour;
    }
    return smallest;
}

std::optional<ClockShift> judge_alone(const Case& at_hand) {
    if (at_hand.fit_now > 0) return std::nullopt;
    const auto runs = runs_that_fit(at_hand);
    if (runs.size() != 1) return std::nullopt;
    const int shift = smallest_hour(runs.front()).value_or(smallest_shift(runs.front()));
    return proposal(at_hand, shift);
}

double share_fitting(const DevicePhotos& device, const SittingHours& hours) {
    if (device.photos.empty()) return 0;
    return fitting(moments_of(device), device.shift, hours) /
           static_cast<double>(device.photos.size());
}

// The true moments of sittings' photos by devices that fit better than this one.
Moments moments_of_others(const DevicePhotos& device, std::span<const DevicePhotos> devices,
                          const SittingHours& hours) {
    const double share = share_fitting(device, hours);
    Moments moments;
    for (const DevicePhotos& other : devices) {
        if (share_fitting(other, hours) <= share) continue;
        for (const TimedPhoto& photo : other.photos) {
            const LocalTime moment = photo.moment + other.shift;
            if (hours.hold(moment)) moments.push_back(moment);
        }
    }
    std::sort(moments.begin(), moments.end());
    return moments;
}

std::optional<ClockShift> judge_device(const DevicePhotos& device,
                                       std::span<const DevicePhotos> devices,
                                       const SittingHours& hours) {
    Case at_hand{device.device, device.shift, moments_of(device), {}, 0, {}, {}};
    at_hand.fit_now = fitting(at_hand.moments, device.shift, hours);
    if (at_hand.fit_now == at_hand.photos()) return std::nullopt;
    at_hand.others = moments_of_others(device, devices, hours);
    at_hand.fits = fit_curve(at_hand.moments, hours);
    at_hand.likeness = likeness_curve(at_hand.moments, at_hand.others);
    const Agreement verdict = judge_by_others(at_hand, hours);
    return verdict.told ? verdict.shift : judge_alone(at_hand);
}

}  // namespace

std::vector<ClockShift> propose_clock_shifts(std::span<const DevicePhotos> devices,
                                             std::span<const Sitting> sittings) {
    const SittingHours hours(sittings);
    std::vector<ClockShift> proposals;
    for (const DevicePhotos& device : devices) {
        if (auto shift = judge_device(device, devices, hours)) proposals.push_back(*shift);
    }
    return proposals;
}

std::string shift_size_text(seconds shift) {
    const std::int64_t size = std::abs(shift.count());
    std::string text;
    const auto add = [&](std::int64_t count, std::string_view unit) {
        if (count == 0) return;
        if (!text.empty()) text += ' ';
        text += std::to_string(count) + ' ' + std::string(unit) + (count == 1 ? "" : "s");
    };
    add(size / 3600, "hour");
    add(size / 60 % 60, "minute");
    add(size % 60, "second");
    return text.empty() ? "0 minutes" : text;
}

}  // namespace quarterturn
