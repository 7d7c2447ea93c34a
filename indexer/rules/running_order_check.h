#pragma once
// What follows from a plan that was changed by hand. The rules are those of running_order.h.

#include <optional>
#include <string>
#include <vector>

#include "indexer/rules/running_order.h"

namespace quarterturn {

struct Consequences {
    std::vector<int> late;  // minutes, in the order of the clients; 0 for who has no place
    int late_in_all = 0;
    int worst = 0;
    std::vector<std::string> lateness;  // a sentence for each client who is late
    std::vector<std::string> broken;    // a sentence for each rule that is not kept
};

// The seats may be any, in any order.
Consequences check_morning(const MorningNeeds& needs, const std::vector<Seat>& seats);

// The client's parts begun at `at`, by `stylist` when one is named (from 0), with the same wait
// between them. Without a seat for her, nothing changes.
std::vector<Seat> moved(std::vector<Seat> seats, ClientId client, int at,
                        std::optional<int> stylist);

// One part moved: a set takes her finish along, as above; a finish moves alone in time, and to
// another stylist with her set.
std::vector<Seat> moved_part(std::vector<Seat> seats, ClientId client, SeatPart part, int at,
                             std::optional<int> stylist);

// "Ada Lindqvist is ready at 12:40, 10 minutes late."
std::string lateness_text(const MorningClient& client, int ends);
// When she is ready; nothing without a seat for her.
std::optional<int> ready_at(ClientId client, const std::vector<Seat>& seats);

}  // namespace quarterturn
