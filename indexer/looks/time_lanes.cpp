#include "indexer/looks/time_lanes.h"

#include <algorithm>
#include <map>

namespace quarterturn {

ChartHours chart_hours(const MorningNeeds& needs, const std::vector<Seat>& seats, bool all_marks) {
    int from = minutes_of_a_day;
    int to = 0;
    const auto take_in = [&](int minute) {
        from = std::min(from, minute);
        to = std::max(to, minute);
    };
    for (const Seat& seat : seats) {
        take_in(seat.begins);
        take_in(seat.ends);
    }
    if (all_marks) {
        for (const StylistHours& hours : needs.stylists) take_in(hours.arrives);
        for (const MorningClient& client : needs.clients) take_in(client.ready_by);
    }
    if (from > to) return {usual_arrival, usual_arrival + half_an_hour};
    from = from / half_an_hour * half_an_hour;
    to = (to + half_an_hour - 1) / half_an_hour * half_an_hour;
    return {from, std::max(to, from + half_an_hour)};
}

std::vector<Cooling> coolings(const std::vector<Seat>& seats) {
    std::vector<Cooling> found;
    std::map<int, std::vector<int>> free_from;  // of each lane, by stylist
    for (const Seat& seat : seats) {
        const auto finish = std::ranges::find_if(seats, [&](const Seat& later) {
            return later.client == seat.client && later.part == SeatPart::finish;
        });
        if (seat.part != SeatPart::set || finish == seats.end()) continue;
        if (finish->begins <= seat.ends) continue;
        std::vector<int>& lanes = free_from[seat.stylist];
        const auto lane =
            std::ranges::find_if(lanes, [&](int minute) { return minute <= seat.ends; });
        const int number = static_cast<int>(lane - lanes.begin());
        if (lane == lanes.end()) lanes.push_back(0);
        lanes[static_cast<std::size_t>(number)] = finish->begins;
        found.push_back({seat.client, seat.stylist, seat.ends, finish->begins, number});
    }
    return found;
}

}  // namespace quarterturn
