#include "indexer/rules/day_photos.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace quarterturn {
namespace {

using Round = std::span<const DayPhoto>;

std::vector<Round> rounds_of(std::span<const DayPhoto> photos) {
    std::vector<Round> rounds;
    std::size_t begins = 0;
    for (std::size_t i = 1; i <= photos.size(); ++i) {
        if (i < photos.size() && photos[i].moment - photos[i - 1].moment <= within_a_round) {
            continue;
        }
        rounds.push_back(photos.subspan(begins, i - begins));
        begins = i;
    }
    return rounds;
}

double minutes_from(LocalTime midnight, LocalTime moment) {
    return std::chrono::duration<double, std::ratio<60>>(moment - midnight).count();
}

// How far from the end of her seat; nothing when the round cannot be hers.
std::optional<double> minutes_off(double minute, const DayClient& client) {
    const double off = std::abs(minute - client.ends);
    if (minute < client.begins || off > furthest_minutes) return std::nullopt;
    return off;
}

// For every round the place of its client among all, or none. least[i][j]: the first i rounds, none
// of them of a client after the first j.
class Assignment {
  public:
    Assignment(const std::vector<Round>& rounds, std::span<const DayClient> clients,
               LocalTime midnight)
        : clients_(clients), least_(rounds.size() + 1) {
        for (const Round& round : rounds) {
            minutes_.push_back(minutes_from(midnight, round.front().moment));
        }
        for (auto& row : least_) row.assign(clients.size() + 1, 0);
        for (std::size_t i = 1; i < least_.size(); ++i) {
            for (std::size_t j = 0; j <= clients.size(); ++j) least_[i][j] = least(i, j);
        }
    }

    std::vector<std::optional<std::size_t>> clients_of_rounds() const {
        std::vector<std::optional<std::size_t>> found(minutes_.size());
        std::size_t j = clients_.size();
        for (std::size_t i = minutes_.size(); i > 0;) {
            if (j > 0 && least_[i][j] == least_[i][j - 1]) {
                --j;
            } else {
                --i;
                if (j > 0 && least_[i + 1][j] == with_client(i + 1, j)) found[i] = j - 1;
            }
        }
        return found;
    }

  private:
    double with_client(std::size_t i, std::size_t j) const {
        const auto off = minutes_off(minutes_[i - 1], clients_[j - 1]);
        return off ? least_[i - 1][j] + *off : std::numeric_limits<double>::infinity();
    }

    double least(std::size_t i, std::size_t j) const {
        const double nobody = least_[i - 1][j] + furthest_minutes;
        if (j == 0) return nobody;
        return std::min({nobody, least_[i][j - 1], with_client(i, j)});
    }

    std::span<const DayClient> clients_;
    std::vector<double> minutes_;
    std::vector<std::vector<double>> least_;
};

Angle next_round_the_head(Angle angle, int steps) {
    const auto at = std::ranges::find(quarter_angles, angle);
    if (at == quarter_angles.end()) return angle;
    const auto count = std::ssize(quarter_angles);
    const auto place = (at - quarter_angles.begin() + steps % count + count) % count;
    return quarter_angles[static_cast<std::size_t>(place)];
}

// How many steps she has walked by each photo of the round.
std::vector<int> steps_walked(Round round) {
    std::vector<int> steps{0};
    for (std::size_t i = 1; i < round.size(); ++i) {
        const bool stood = round[i].moment - round[i - 1].moment < of_one_angle;
        steps.push_back(steps.back() + (stood ? 0 : 1));
    }
    return steps;
}

bool is_quarter(const std::optional<Angle>& angle) {
    return angle && std::ranges::find(quarter_angles, *angle) != quarter_angles.end();
}

// The told angle that a photo's own follows from: the last one before it, else the first after it.
std::optional<std::size_t> told_beside(Round round, std::size_t photo) {
    for (std::size_t i = photo + 1; i-- > 0;) {
        if (is_quarter(round[i].told)) return i;
    }
    for (std::size_t i = photo + 1; i < round.size(); ++i) {
        if (is_quarter(round[i].told)) return i;
    }
    return std::nullopt;
}

// How badly what was seen of a face goes with an angle: a face from the side tells left from right.
// That none was seen says nothing, since the search misses many.
int against(const HeadSigns& signs, Angle angle) {
    const bool to_left = signs.profile_to_left && !signs.profile_to_right;
    const bool to_right = signs.profile_to_right && !signs.profile_to_left;
    const bool any = signs.frontal_face || signs.profile_to_left || signs.profile_to_right;
    if (angle == Angle::left) return to_right ? 3 : (signs.frontal_face ? 2 : 0);
    if (angle == Angle::right) return to_left ? 3 : (signs.frontal_face ? 2 : 0);
    if (angle == Angle::back) return any ? 2 : 0;
    return signs.frontal_face || !any ? 0 : 1;
}

// One way to walk round the head: where she begins, and which way she goes.
struct Walk {
    Angle first = quarter_angles.front();
    int direction = 1;

    Angle at(int steps) const { return next_round_the_head(first, direction * steps); }
};

// The usual one, that the told angles say, or nothing where none is told.
Walk usual_walk(Round round, const std::vector<int>& steps) {
    const auto from = told_beside(round, 0);
    if (!from) return {};
    return {next_round_the_head(*round[*from].told, -steps[*from]), 1};
}

int against(const Walk& walk, Round round, const std::vector<int>& steps) {
    constexpr int told_otherwise = 100;
    int sum = 0;
    for (std::size_t i = 0; i < round.size(); ++i) {
        const Angle angle = walk.at(steps[i]);
        if (is_quarter(round[i].told)) {
            sum += *round[i].told == angle ? 0 : told_otherwise;
        } else if (round[i].signs && !round[i].told) {
            sum += against(*round[i].signs, angle);
        }
    }
    return sum;
}

// Another than the usual one only where the faces say it clearly.
Walk likely_walk(Round round, const std::vector<int>& steps) {
    constexpr int clearly = 2;
    Walk best = usual_walk(round, steps);
    int least = against(best, round, steps) - clearly + 1;
    for (const Angle first : quarter_angles) {
        for (const int direction : {1, -1}) {
            const Walk walk{first, direction};
            const int sum = against(walk, round, steps);
            if (sum >= least) continue;
            best = walk;
            least = sum;
        }
    }
    return best;
}

// Follows from the told angle beside it, in the direction she walks.
Angle walked_to(Round round, std::size_t photo, const std::vector<int>& steps, const Walk& walk) {
    const auto from = told_beside(round, photo);
    if (!from) return walk.at(steps[photo]);
    return next_round_the_head(*round[*from].told, walk.direction * (steps[photo] - steps[*from]));
}

void add_places(std::vector<DayPlace>& places, Round round, std::optional<ClientId> client) {
    constexpr int looks_elsewhere = 3;
    const std::vector<int> steps = steps_walked(round);
    const Walk walk = likely_walk(round, steps);
    for (std::size_t i = 0; i < round.size(); ++i) {
        DayPlace place{round[i].photo, client, {}, client && round[i].told.has_value()};
        if (client && round[i].told) {
            place.angle = round[i].told;
        } else if (client) {
            const Angle angle = walked_to(round, i, steps, walk);
            const bool open = round[i].signs && against(*round[i].signs, angle) >= looks_elsewhere;
            if (!open) place.angle = angle;
        }
        places.push_back(place);
    }
}

}  // namespace

std::vector<DayClient> day_clients(std::span<const Seat> seats) {
    std::vector<DayClient> clients;
    for (const Seat& seat : seats) {
        const auto there = std::ranges::find(clients, seat.client, &DayClient::client);
        if (there == clients.end()) {
            clients.push_back({seat.client, seat.begins, seat.ends});
        } else {
            there->begins = std::min(there->begins, seat.begins);
            there->ends = std::max(there->ends, seat.ends);
        }
    }
    std::ranges::stable_sort(clients, {}, &DayClient::ends);
    return clients;
}

std::vector<DayPlace> propose_places(std::span<const DayPhoto> photos,
                                     std::span<const DayClient> clients, LocalTime midnight) {
    if (photos.empty()) return {};
    const std::vector<Round> rounds = rounds_of(photos);
    const auto found = Assignment(rounds, clients, midnight).clients_of_rounds();
    std::vector<DayPlace> places;
    for (std::size_t i = 0; i < rounds.size(); ++i) {
        add_places(places, rounds[i],
                   found[i] ? std::optional(clients[*found[i]].client) : std::nullopt);
    }
    return places;
}

}  // namespace quarterturn
