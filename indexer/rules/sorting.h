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

// The sittings whose hours hold this moment: none, one, or several. Ends are inside.
std::vector<SittingId> sittings_at(LocalTime moment, std::span<const Sitting> sittings);

struct TimedPhoto {
    PhotoId photo;
    LocalTime moment{};
};

struct StageSuggestion {
    PhotoId photo;
    Stage stage = Stage::during;
    std::string source;  // "taken before the first long gap"
};

// Within one sitting: the photos before the first long gap are "before", those after the last long
// gap are "after", what lies between is "during". No gap, no suggestion.
std::vector<StageSuggestion> suggest_stages(std::span<const TimedPhoto> photos);

struct DevicePhotos {
    DeviceId device;
    std::vector<TimedPhoto> photos;  // moments by the device's own clock
};

struct ClockShift {
    DeviceId device;
    std::chrono::seconds shift{0};  // to be added to the device's times
    std::string because;            // one sentence to show her
};

// Proposed for each device whose photos fit no sitting as they are and fit one after one shift.
// The shift is told from another device's photos of the same sitting where there are any.
std::vector<ClockShift> propose_clock_shifts(std::span<const DevicePhotos> devices,
                                             std::span<const Sitting> sittings);

// Two photos of the same moment by two devices say how far `wrong` is off.
std::chrono::seconds shift_from_pair(LocalTime wrong, LocalTime right);

}  // namespace quarterturn
