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

void add_places(std::vector<DayPlace>& places, Round round, std::optional<ClientId> client) {
    const std::vector<int> steps = steps_walked(round);
    for (std::size_t i = 0; i < round.size(); ++i) {
        DayPlace place{round[i].photo, client, {}, client && round[i].told.has_value()};
        if (client && round[i].told) {
            place.angle = round[i].told;
        } else if (client) {
            const auto from = told_beside(round, i);
            const Angle known = from ? *round[*from].told : quarter_angles.front();
            place.angle = next_round_the_head(known, steps[i] - (from ? steps[*from] : 0));
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
