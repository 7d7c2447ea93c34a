#include "indexer/rules/running_order/one_after_the_other.h"

#include <algorithm>
#include <tuple>

namespace quarterturn {
namespace {

// From `from` on; the set is begun later where the finish would come too late.
std::vector<Seat> both_parts(const MorningClient& client, const Calendar& calendar, int stylist,
                             int from) {
    const ChairWork& work = client.work;
    for (int begins = calendar.place(from, work.before);;
         begins = calendar.place(begins + 1, work.before)) {
        const int set = begins + work.before;
        std::vector<Seat> seats{{client.client, SeatPart::set, stylist, begins, set}};
        if (!work.in_two_parts()) return seats;
        const int finish = calendar.place(set + work.cooling, work.after);
        seats.push_back({client.client, SeatPart::finish, stylist, finish, finish + work.after});
        if (finish - set <= work.may_be_left) return seats;
    }
}

}  // namespace

std::vector<Seat> one_after_the_other(const MorningNeeds& needs,
                                      const std::vector<Calendar>& calendars, int from) {
    std::vector<MorningClient> clients = needs.clients;
    std::ranges::stable_sort(clients, {}, [](const MorningClient& client) {
        return std::tuple{!client.first, client.last, client.ready_by};
    });
    std::vector<int> free(calendars.size(), from);
    std::vector<Seat> all;
    for (const MorningClient& client : clients) {
        const auto freest = std::ranges::min_element(free);
        const auto stylist = static_cast<std::size_t>(freest - free.begin());
        const int not_before = client.last ? std::ranges::max(free) : 0;
        int begins = std::max(*freest, client.arrives);
        auto seats = both_parts(client, calendars[stylist], static_cast<int>(stylist), begins);
        while (seats.back().ends < not_before) {
            seats = both_parts(client, calendars[stylist], static_cast<int>(stylist), ++begins);
        }
        if (client.first) std::ranges::fill(free, seats.front().begins);
        free[stylist] = seats.back().ends;
        all.insert(all.end(), seats.begin(), seats.end());
    }
    return all;
}

}  // namespace quarterturn
