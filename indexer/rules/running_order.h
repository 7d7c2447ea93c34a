#pragma once
// Who sits when on the wedding morning, and with whom. Times are minutes after midnight.
//
// The rules: a stylist has her hands on one client at a time, from her arrival on and never in a
// break; a part is not broken off. A set that cools needs nobody, so its stylist does others
// meanwhile, and the client may leave the chair: chairs are not counted. Both parts of a client are
// done by the same stylist, since who wound a set knows how it comes out. Nobody begins before her
// who must be first, and nobody is finished after her who must be last.
//
// What is wanted, in this order:
//   1. the least lateness: the minutes past the ready-by times, added up;
//   2. of these, the least for whom it is worst;
//   3. the latest start: the minute at which the first part begins;
//   4. each stylist for herself begins as late as that allows.
// What is still alike is settled by the order the clients are named in, so equal needs give equal
// plans.
//
// How: a good plan is found by trying changes, and is the limit for the exact search. That bounds
// for each stylist how little late every set of clients can be (Held and Karp 1962), holds against
// the limit what the clients left must be late by hands-on work alone, and puts the stylists
// together over all divisions of the clients. Where no order reaches the bound, that set is
// searched depth first; a part whose finish would come too late is begun later by as much as is
// missing.

#include <string>
#include <vector>

#include "indexer/record/morning.h"

namespace quarterturn {

inline constexpr int minutes_of_a_day = 24 * 60;

struct MorningClient {
    ClientId client;
    std::string name;
    ChairWork work;
    int ready_by = 0;
    int arrives = 0;
    bool first = false;
    bool last = false;

    bool operator==(const MorningClient&) const = default;
};

struct MorningNeeds {
    std::vector<MorningClient> clients;  // at most most_in_the_chair
    std::vector<StylistHours>
        stylists;  // 1 to most_stylists; breaks in any order, also overlapping

    bool operator==(const MorningNeeds&) const = default;
};

struct RunningOrder {
    std::vector<Seat> seats;  // in the order of begins, then stylists
    std::vector<int> late;    // minutes, in the order of the clients
    int late_in_all = 0;
    int worst = 0;
    int begins = 0;
    // False: the best found within the steps allowed. Its start may not be the latest; whether its
    // lateness is the least is told apart.
    bool proven = true;
    bool lateness_proven = true;
};

// Steps of the search, not time, so that every machine answers alike (chosen by measurement, see
// tests/bench/bench_running_order.cpp: a second at most for twelve clients).
inline constexpr long usual_steps = 2'000'000;

// Throws std::invalid_argument with a sentence when the needs cannot be planned at all: nobody to
// do, too many clients or stylists, two who must be first or last, one part without minutes, or one
// client who must be both among others.
RunningOrder plan_morning(const MorningNeeds& needs, long steps = usual_steps);

}  // namespace quarterturn
