#pragma once
// Every shift of whole minutes within reach is tried at once: one curve says how many photos fit
// with it, a second how well they then lie upon the photos of other devices.

#include <vector>

#include "indexer/rules/sitting_hours.h"

namespace quarterturn {

// The furthest that the clocks of two places differ: UTC-12 to UTC+14, in minutes.
inline constexpr int shift_reach = 26 * 60;

// A value for each shift from -shift_reach to +shift_reach minutes; 0 beyond.
class ShiftCurve {
  public:
    double at(int shift) const { return inside(shift) ? values_[index(shift)] : 0.0; }
    void add(int shift, double value) {
        if (inside(shift)) values_[index(shift)] += value;
    }

  private:
    static bool inside(int shift) { return -shift_reach <= shift && shift <= shift_reach; }
    static std::size_t index(int shift) { return static_cast<std::size_t>(shift + shift_reach); }

    std::vector<double> values_ = std::vector<double>(2 * shift_reach + 1, 0.0);
};

// How many of the moments lie in a sitting's hours with each shift.
ShiftCurve fit_curve(const std::vector<LocalTime>& moments, const SittingHours& hours);

// How many minutes of the one come upon minutes of the other with each shift, blurred by a few
// minutes, since two devices are rarely raised in the same one. A burst weighs no more than one
// photo.
ShiftCurve likeness_curve(const std::vector<LocalTime>& moments,
                          const std::vector<LocalTime>& others);

// The whole minute nearest to the shift, close to `about`, with which the moments lie best upon the
// others (the mean-shift of Fukunaga and Hostetler, 1975, on the seconds between them). `others`
// are in order.
int sharpened(const std::vector<LocalTime>& moments, const std::vector<LocalTime>& others,
              int about);

}  // namespace quarterturn
