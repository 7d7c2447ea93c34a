#include "indexer/rules/sitting_hours.h"

#include <algorithm>

namespace quarterturn {

SittingHours::SittingHours(std::span<const Sitting> sittings) {
    std::vector<TimeSpan> all;
    for (const Sitting& sitting : sittings) {
        if (sitting.starts <= sitting.ends) all.push_back({sitting.starts, sitting.ends});
    }
    std::sort(all.begin(), all.end(),
              [](const TimeSpan& one, const TimeSpan& other) { return one.from < other.from; });
    for (const TimeSpan& span : all) {
        if (spans_.empty() || spans_.back().to < span.from) {
            spans_.push_back(span);
        } else {
            spans_.back().to = std::max(spans_.back().to, span.to);
        }
    }
}

bool SittingHours::hold(LocalTime moment) const {
    return !between(moment, moment).empty();
}

std::span<const TimeSpan> SittingHours::between(LocalTime from, LocalTime to) const {
    const auto first =
        std::lower_bound(spans_.begin(), spans_.end(), from,
                         [](const TimeSpan& span, LocalTime moment) { return span.to < moment; });
    const auto last =
        std::upper_bound(first, spans_.end(), to,
                         [](LocalTime moment, const TimeSpan& span) { return moment < span.from; });
    return {first, last};
}

}  // namespace quarterturn
