// Who must be first or last, between stylists.

#include <algorithm>

#include "indexer/rules/running_order/morning_search.h"

namespace quarterturn {

std::vector<MorningWindow> MorningSearch::halves(const MorningWindow& window,
                                                 const FoundMorning& found) const {
    MorningWindow early = window;
    MorningWindow late = window;
    if (first_ && begin_of(*first_, found.seats) > found.begins) {
        early.first_latest = (found.begins + begin_of(*first_, found.seats)) / 2;
        late.from = early.first_latest + 1;
        return {early, late};
    }
    if (!last_) return {};
    const int ends = std::ranges::max(found.seats, {}, &Seat::ends).ends;
    const int last = end_of(*last_, found.seats);
    if (last >= ends) return {};
    early.ends_by = (last + ends) / 2;
    late.last_earliest = early.ends_by + 1;
    return {late, early};
}

std::vector<std::vector<OrderedPart>> MorningSearch::orders_of(const FoundMorning& found) const {
    std::vector<std::vector<OrderedPart>> orders(calendars_.size());
    for (const Seat& seat : found.seats) {
        const auto client = std::ranges::find(needs_.clients, seat.client, &MorningClient::client);
        orders[static_cast<std::size_t>(seat.stylist)].push_back(
            {static_cast<int>(client - needs_.clients.begin()), seat.part});
    }
    return orders;
}

// Nobody begins before the first, and the last is ready when everybody is: both only put off what
// is too early, so the times that keep them are reached from below.
std::optional<FoundMorning> MorningSearch::with_order_rules(const FoundMorning& found,
                                                            const MorningWindow& window,
                                                            int worst) const {
    const auto orders = orders_of(found);
    std::vector<ChairJob> jobs = jobs_in(window, worst);
    FoundMorning kept;
    kept.division = found.division;
    int from = window.from;
    while (true) {
        kept.seats.clear();
        for (std::size_t i = 0; i < orders.size(); ++i) {
            const bool own_first =
                !orders[i].empty() && jobs[static_cast<std::size_t>(orders[i].front().job)].first;
            const auto parts =
                in_order(jobs, calendars_[i], orders[i], own_first ? window.from : from);
            if (parts.empty() != orders[i].empty()) return std::nullopt;
            const auto seats = seats_of(static_cast<int>(i), parts);
            kept.seats.insert(kept.seats.end(), seats.begin(), seats.end());
        }
        sum_up(kept);
        const auto broken = halves(window, kept);
        if (broken.empty()) break;
        if (first_) from = std::max(from, begin_of(*first_, kept.seats));
        const int ends = std::ranges::max(kept.seats, {}, &Seat::ends).ends;
        for (ChairJob& job : jobs) {
            if (job.last) job.earliest_end = ends;
        }
    }
    kept.division.late_in_all = kept.late_in_all;
    return kept;
}

}  // namespace quarterturn
