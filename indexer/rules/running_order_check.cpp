#include "indexer/rules/running_order_check.h"

#include <algorithm>
#include <tuple>

namespace quarterturn {
namespace {

std::string minutes_text(int minutes) {
    return std::to_string(minutes) + (minutes == 1 ? " minute" : " minutes");
}

std::string stylist_text(int stylist) {
    return "Stylist " + std::to_string(stylist + 1);
}

bool meet(int begins, int ends, int other_begins, int other_ends) {
    return begins < other_ends && other_begins < ends;
}

class MorningChecker {
  public:
    MorningChecker(const MorningNeeds& needs, const std::vector<Seat>& seats)
        : needs_(needs), seats_(seats) {
        std::ranges::stable_sort(seats_, {}, [](const Seat& seat) {
            return std::tuple{seat.begins, seat.stylist, seat.ends};
        });
    }

    Consequences run() {
        for (const MorningClient& client : needs_.clients) check_client(client);
        for (const Seat& seat : seats_) check_hours(seat);
        for (std::size_t i = 0; i < seats_.size(); ++i) {
            for (std::size_t k = i + 1; k < seats_.size(); ++k) check_pair(seats_[i], seats_[k]);
        }
        for (const MorningClient& client : needs_.clients) check_order(client);
        return std::move(result_);
    }

  private:
    void broken(std::string sentence) { result_.broken.push_back(std::move(sentence)); }

    const Seat* seat_of(ClientId client, SeatPart part) const {
        const auto found = std::ranges::find_if(
            seats_, [&](const Seat& seat) { return seat.client == client && seat.part == part; });
        return found == seats_.end() ? nullptr : &*found;
    }

    std::string name_of(ClientId client) const {
        const auto found = std::ranges::find(needs_.clients, client, &MorningClient::client);
        return found == needs_.clients.end() ? "Somebody who is not of the party" : found->name;
    }

    void check_client(const MorningClient& client) {
        check_length(client, SeatPart::set, client.work.before);
        if (client.work.in_two_parts()) {
            check_length(client, SeatPart::finish, client.work.after);
            check_wait(client);
        }
        check_lateness(client);
    }

    void check_length(const MorningClient& client, SeatPart part, int minutes) {
        const Seat* seat = seat_of(client.client, part);
        if (seat == nullptr) {
            broken(client.name + (part == SeatPart::set ? " has no place in the plan."
                                                        : " is not finished in the plan."));
            return;
        }
        if (part == SeatPart::set && seat->begins < client.arrives) {
            broken(client.name + " is begun at " + minute_text(seat->begins) +
                   " and comes only at " + minute_text(client.arrives) + ".");
        }
        if (seat->ends - seat->begins != minutes) {
            broken(client.name + " has " + minutes_text(seat->ends - seat->begins) + " from " +
                   minute_text(seat->begins) + " on and needs " + minutes_text(minutes) + ".");
        }
    }

    void check_wait(const MorningClient& client) {
        const Seat* set = seat_of(client.client, SeatPart::set);
        const Seat* finish = seat_of(client.client, SeatPart::finish);
        if (set == nullptr || finish == nullptr) return;
        if (set->stylist != finish->stylist) {
            broken(client.name + " is set by stylist " + std::to_string(set->stylist + 1) +
                   " and finished by stylist " + std::to_string(finish->stylist + 1) +
                   ": who wound a set should finish it.");
        }
        const int wait = finish->begins - set->ends;
        if (wait < 0) {
            broken(client.name + " is finished before she is set.");
        } else if (wait < client.work.cooling) {
            broken("The set of " + client.name + " has " + minutes_text(wait) +
                   " to cool and needs " + minutes_text(client.work.cooling) + ".");
        } else if (wait > client.work.may_be_left) {
            broken("The set of " + client.name + " is left for " + minutes_text(wait) +
                   " and may be left for " + minutes_text(client.work.may_be_left) + " at most.");
        }
    }

    void check_lateness(const MorningClient& client) {
        const int ends = ready_at(client.client, seats_).value_or(0);
        const int late = std::max(0, ends - client.ready_by);
        result_.late.push_back(late);
        result_.late_in_all += late;
        result_.worst = std::max(result_.worst, late);
        if (late > 0) result_.lateness.push_back(lateness_text(client, ends));
    }

    void check_hours(const Seat& seat) {
        if (seat.stylist < 0 || seat.stylist >= static_cast<int>(needs_.stylists.size())) {
            broken(name_of(seat.client) + " is given to stylist " +
                   std::to_string(seat.stylist + 1) + ", and there " +
                   (needs_.stylists.size() == 1
                        ? "is one."
                        : "are " + std::to_string(needs_.stylists.size()) + "."));
            return;
        }
        const StylistHours& hours = needs_.stylists[static_cast<std::size_t>(seat.stylist)];
        if (seat.begins < hours.arrives) {
            broken(stylist_text(seat.stylist) + " begins " + name_of(seat.client) + " at " +
                   minute_text(seat.begins) + " and comes only at " + minute_text(hours.arrives) +
                   ".");
        }
        for (const Break& pause : hours.breaks) {
            if (!meet(seat.begins, seat.ends, pause.begins, pause.ends)) continue;
            broken(stylist_text(seat.stylist) + " works on " + name_of(seat.client) +
                   " in the break from " + minute_text(pause.begins) + " to " +
                   minute_text(pause.ends) + ".");
        }
    }

    void check_pair(const Seat& first, const Seat& second) {
        if (!meet(first.begins, first.ends, second.begins, second.ends)) return;
        if (first.client == second.client) return;  // said as a finish before the set
        if (first.stylist != second.stylist) return;
        broken(stylist_text(first.stylist) + " has two at once from " + minute_text(second.begins) +
               " on: " + name_of(first.client) + " and " + name_of(second.client) + ".");
    }

    void check_order(const MorningClient& client) {
        const Seat* set = seat_of(client.client, SeatPart::set);
        if (set == nullptr) return;
        const int ends = *ready_at(client.client, seats_);
        for (const MorningClient& other : needs_.clients) {
            const Seat* other_set = seat_of(other.client, SeatPart::set);
            if (other_set == nullptr) continue;
            if (client.first && other_set->begins < set->begins) {
                broken(client.name + " must be first, and " + other.name + " is begun before her.");
            }
            if (client.last && ready_at(other.client, seats_).value_or(0) > ends) {
                broken(client.name + " must be last, and " + other.name + " is ready after her.");
            }
        }
    }

    const MorningNeeds& needs_;
    std::vector<Seat> seats_;
    Consequences result_;
};

}  // namespace

Consequences check_morning(const MorningNeeds& needs, const std::vector<Seat>& seats) {
    return MorningChecker(needs, seats).run();
}

std::vector<Seat> moved(std::vector<Seat> seats, ClientId client, int at,
                        std::optional<int> stylist) {
    const auto set = std::ranges::find_if(seats, [&](const Seat& seat) {
        return seat.client == client && seat.part == SeatPart::set;
    });
    if (set == seats.end()) return seats;
    const int by = at - set->begins;
    for (Seat& seat : seats) {
        if (seat.client != client) continue;
        seat.begins += by;
        seat.ends += by;
        if (stylist) seat.stylist = *stylist;
    }
    return seats;
}

std::vector<Seat> moved_part(std::vector<Seat> seats, ClientId client, SeatPart part, int at,
                             std::optional<int> stylist) {
    if (part == SeatPart::set) return moved(std::move(seats), client, at, stylist);
    for (Seat& seat : seats) {
        if (seat.client != client) continue;
        if (stylist) seat.stylist = *stylist;
        if (seat.part != SeatPart::finish) continue;
        seat.ends += at - seat.begins;
        seat.begins = at;
    }
    return seats;
}

std::string lateness_text(const MorningClient& client, int ends) {
    return client.name + " is ready at " + minute_text(ends) + ", " +
           minutes_text(ends - client.ready_by) + " late.";
}

std::optional<int> ready_at(ClientId client, const std::vector<Seat>& seats) {
    std::optional<int> ends;
    for (const Seat& seat : seats) {
        if (seat.client == client) ends = std::max(ends.value_or(seat.ends), seat.ends);
    }
    return ends;
}

}  // namespace quarterturn
