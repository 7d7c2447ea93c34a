#include "indexer/looks/time_lanes.h"

#include <algorithm>
#include <map>

namespace quarterturn {
namespace {

constexpr int room_to_move = 30;  // minutes before the first begin

ChartHours whole_half_hours(int from, int to) {
    from = from / half_an_hour * half_an_hour;
    to = (to + half_an_hour - 1) / half_an_hour * half_an_hour;
    return {from, std::max(to, from + half_an_hour)};
}

}  // namespace

ChartHours chart_hours(const std::vector<Seat>& seats) {
    if (seats.empty()) return whole_half_hours(usual_arrival, usual_arrival);
    return whole_half_hours(std::ranges::min(seats, {}, &Seat::begins).begins,
                            std::ranges::max(seats, {}, &Seat::ends).ends);
}

ChartHours roomy_chart_hours(const MorningNeeds& needs, const std::vector<Seat>& seats) {
    ChartHours hours = chart_hours(seats);
    hours.from -= room_to_move;
    for (const MorningClient& client : needs.clients) {
        hours.from = std::min(hours.from, client.ready_by);
        hours.to = std::max(hours.to, client.ready_by);
    }
    return whole_half_hours(std::max(0, hours.from), hours.to);
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
