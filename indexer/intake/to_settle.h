#pragma once
// What only she can settle after photos came in: clocks that seem off, and photos whose time fits
// no sitting or several.

#include <optional>
#include <vector>

#include "indexer/intake/sort.h"

namespace quarterturn {

struct DoubtfulClock {
    Device device;
    ClockShift shift;
    // Pictures to judge it by: one of the device's, and the one of another device that would be
    // nearest in time then. Empty where there is none.
    std::optional<Photo> own;
    std::optional<Photo> beside;
    std::vector<Photo> of_device;  // that carry a time, in its order
    std::vector<Photo> of_others;  // of the sittings they would fall in, in the order of moments

    bool operator==(const DoubtfulClock&) const = default;
};

struct UnplacedGroup {
    std::vector<Sitting> fits;    // none, or several
    std::vector<Photo> photos;    // in the order of moments
    std::vector<Sitting> nearby;  // where they may belong, the nearest in time first

    bool operator==(const UnplacedGroup&) const = default;
};

struct ToSettle {
    std::vector<DoubtfulClock> clocks;
    std::vector<UnplacedGroup> groups;  // photos that fit the same sittings are together

    bool operator==(const ToSettle&) const = default;
};

// Writes nothing. Throws StoreError.
ToSettle to_settle(Library& library);

}  // namespace quarterturn
