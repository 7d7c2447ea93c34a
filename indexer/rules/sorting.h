#pragma once
// Sorting photos by time: which sitting, which stage, and whose clock is off.

#include <chrono>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/record/people.h"
#include "indexer/record/photo.h"

namespace quarterturn {

// Sittings by their hours, so that those of a moment are found without looking at all of them.
class SittingsByTime {
  public:
    explicit SittingsByTime(std::span<const Sitting> sittings);

    // The sittings whose hours hold this moment: none, one, or several, in the order they were
    // given. Ends are inside.
    std::vector<SittingId> at(LocalTime moment) const;

  private:
    struct Hours {
        LocalTime starts{};
        LocalTime ends{};
        LocalTime last_end{};  // of this one and all that start before
        std::size_t place = 0;
        SittingId sitting;
    };
    std::vector<Hours> hours_;  // by their start
};

struct TimedPhoto {
    PhotoId photo;
    LocalTime moment{};
};

struct StageSuggestion {
    PhotoId photo;
    Stage stage = Stage::during;
    std::string source;  // "taken before the first long gap"
};

// A trial is a handful of photos within minutes, long work with now and then one, and a handful
// again. A gap is long from 15 minutes on when it is also at least three times the median of the
// gaps shorter than 15 minutes, if there are any (chosen: common practice).
inline constexpr std::chrono::minutes long_gap{15};
inline constexpr int long_gap_times_median = 3;

// Within one sitting: the photos before the first long gap are "before"; those after the last long
// gap are "after", and with several looks those between the last long gaps too, one group for each
// look; what lies between is "during". No long gap, no suggestion. In the order of time.
std::vector<StageSuggestion> suggest_stages(std::span<const TimedPhoto> photos, int looks = 1);

struct DevicePhotos {
    DeviceId device;
    std::vector<TimedPhoto> photos;  // moments by the device's own clock
    std::chrono::seconds shift{0};   // what is added to them today
};

struct ClockShift {
    DeviceId device;
    std::chrono::seconds shift{0};  // to be added to the device's own times, in place of today's
    std::string because;            // a sentence or two to show her
    int photos = 0;                 // of the device
    int fit_now = 0;                // how many of them lie in a sitting's hours today
    int fit_then = 0;               // and how many with the shift

    bool operator==(const ClockShift&) const = default;
};

// A shift for each device whose photos do not all fit sittings today and do after one shift. There
// are two ways to know a shift, both on whole minutes:
//
// - From other devices: when most photos of the device come to stand beside photos of others in the
//   same sitting. Right to a few minutes, since she may always raise the one after the other. Up to
//   26 hours, the furthest that two places' clocks differ. A few strays may stay outside (at most
//   one in ten).
// - Without others: only when none of its photos fit today and all fit one place; then a whole
//   hour where one fits (another time zone, summer time), else the smallest shift that fits. Up to
//   14 hours. Some that fit and some that do not may as well mean that the hours of the sitting
//   were noted wrong, so nothing is proposed.
//
// Nothing is proposed where two different shifts explain the photos about as well.
std::vector<ClockShift> propose_clock_shifts(std::span<const DevicePhotos> devices,
                                             std::span<const Sitting> sittings);

// "47 minutes", "1 hour 2 minutes"; the sign is left to the sentence around it.
std::string shift_size_text(std::chrono::seconds shift);

// Two photos of the same moment by two devices say how far `wrong` is off.
std::chrono::seconds shift_from_pair(LocalTime wrong, LocalTime right);

}  // namespace quarterturn
