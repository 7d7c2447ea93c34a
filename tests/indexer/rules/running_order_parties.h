#pragma once
// Parties to be planned.

#include <string>

#include "indexer/rules/running_order.h"

namespace quarterturn {

inline MorningClient client(int number, ChairWork work, int ready_by) {
    MorningClient result;
    result.client = ClientId{number};
    result.name = "Client " + std::to_string(number);
    result.work = work;
    result.ready_by = ready_by;
    return result;
}

inline ChairWork in_one_go(int minutes) {
    return {minutes, 0, 0, 0};
}

// A bride with a set of 22 + 43 minutes and two more, all ready by 12:30 (750).
inline MorningNeeds three_by_half_past_twelve() {
    MorningNeeds needs;
    needs.clients = {client(1, {22, 15, 90, 43}, 750), client(2, {20, 15, 60, 25}, 750),
                     client(3, in_one_go(40), 720)};
    needs.clients[0].last = true;
    needs.stylists.resize(1);
    return needs;
}

}  // namespace quarterturn
