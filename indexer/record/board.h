#pragma once
// What she sets down at the board on the wedding morning, and where a head stands in a photo.

#include <cstdint>
#include <string>

#include "indexer/record/id.h"

namespace quarterturn {

using TimerId = Id<struct TimerRow>;

// A step of the build that is done. The tick holds while the line says what it said.
struct StepTick {
    int number = 0;  // among the steps, from 0
    std::string words;

    bool operator==(const StepTick&) const = default;
};

// A set that cools, or another wait. Moments are seconds since 1970 in UTC, so that the clock may
// be put forward or back an hour meanwhile.
struct Timer {
    TimerId id;
    WeddingId wedding;
    std::string name;  // "Ysolde: cooling"
    std::int64_t begins = 0;
    std::int64_t ends = 0;

    bool operator==(const Timer&) const = default;
};

// A point in shares of the width and height of the picture, upright and the right way round.
struct PicturePoint {
    double x = 0;
    double y = 0;

    bool operator==(const PicturePoint&) const = default;
};

// The top of the hair and the chin, or the nape where no face shows.
struct HeadPoints {
    PicturePoint top;
    PicturePoint bottom;

    bool operator==(const HeadPoints&) const = default;
};

}  // namespace quarterturn
