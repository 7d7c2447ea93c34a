#pragma once
// The hours of all sittings as one row of spans that do not touch, for quick answers about many
// moments.

#include <span>
#include <vector>

#include "indexer/record/people.h"

namespace quarterturn {

// Both ends are inside.
struct TimeSpan {
    LocalTime from{};
    LocalTime to{};
};

class SittingHours {
  public:
    explicit SittingHours(std::span<const Sitting> sittings);

    bool hold(LocalTime moment) const;
    // The spans that touch [from, to], in the order of time.
    std::span<const TimeSpan> between(LocalTime from, LocalTime to) const;

  private:
    std::vector<TimeSpan> spans_;
};

}  // namespace quarterturn
