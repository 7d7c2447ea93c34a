#include "indexer/rules/sorting.h"

#include <algorithm>
#include <tuple>

namespace quarterturn {
namespace {

using Gap = LocalTime::duration;

std::vector<TimedPhoto> in_order_of_time(std::span<const TimedPhoto> photos) {
    std::vector<TimedPhoto> sorted(photos.begin(), photos.end());
    std::sort(sorted.begin(), sorted.end(), [](const TimedPhoto& one, const TimedPhoto& other) {
        return std::tie(one.moment, one.photo) < std::tie(other.moment, other.photo);
    });
    return sorted;
}

Gap shortest_long_gap(const std::vector<TimedPhoto>& photos) {
    std::vector<Gap> short_gaps;
    for (std::size_t i = 1; i < photos.size(); ++i) {
        const Gap gap = photos[i].moment - photos[i - 1].moment;
        if (gap < long_gap) short_gaps.push_back(gap);
    }
    if (short_gaps.empty()) return long_gap;
    const auto middle = short_gaps.begin() + static_cast<std::ptrdiff_t>(short_gaps.size() / 2);
    std::nth_element(short_gaps.begin(), middle, short_gaps.end());
    return std::max<Gap>(long_gap, *middle * long_gap_times_median);
}

// For each photo, how many long gaps lie before it.
std::vector<int> group_numbers(const std::vector<TimedPhoto>& photos) {
    const Gap threshold = shortest_long_gap(photos);
    std::vector<int> numbers(photos.size(), 0);
    for (std::size_t i = 1; i < photos.size(); ++i) {
        const bool parted = photos[i].moment - photos[i - 1].moment >= threshold;
        numbers[i] = numbers[i - 1] + (parted ? 1 : 0);
    }
    return numbers;
}

StageSuggestion suggest(PhotoId photo, int group, int first_after, int last_group) {
    if (group == 0) return {photo, Stage::before, "taken before the first long gap"};
    if (group < first_after) return {photo, Stage::during, "taken between long gaps"};
    if (group < last_group) return {photo, Stage::after, "taken between the last long gaps"};
    return {photo, Stage::after, "taken after the last long gap"};
}

}  // namespace

SittingsByTime::SittingsByTime(std::span<const Sitting> sittings) {
    for (const Sitting& sitting : sittings) {
        hours_.push_back({sitting.starts, sitting.ends, sitting.ends, hours_.size(), sitting.id});
    }
    std::ranges::stable_sort(hours_, {}, &Hours::starts);
    for (std::size_t i = 1; i < hours_.size(); ++i) {
        hours_[i].last_end = std::max(hours_[i].ends, hours_[i - 1].last_end);
    }
}

std::vector<SittingId> SittingsByTime::at(LocalTime moment) const {
    std::vector<Hours> holding;
    auto next = std::ranges::upper_bound(hours_, moment, {}, &Hours::starts);
    while (next != hours_.begin() && std::prev(next)->last_end >= moment) {
        --next;
        if (next->ends >= moment) holding.push_back(*next);
    }
    std::ranges::sort(holding, {}, &Hours::place);
    std::vector<SittingId> found;
    for (const Hours& hours : holding) found.push_back(hours.sitting);
    return found;
}

std::vector<StageSuggestion> suggest_stages(std::span<const TimedPhoto> photos, int looks) {
    const auto sorted = in_order_of_time(photos);
    const auto groups = group_numbers(sorted);
    std::vector<StageSuggestion> suggestions;
    if (groups.empty() || groups.back() == 0) return suggestions;
    const int first_after = std::max(1, groups.back() + 1 - std::max(1, looks));
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        suggestions.push_back(suggest(sorted[i].photo, groups[i], first_after, groups.back()));
    }
    return suggestions;
}

std::chrono::seconds shift_from_pair(LocalTime wrong, LocalTime right) {
    return std::chrono::round<std::chrono::seconds>(right - wrong);
}

}  // namespace quarterturn
