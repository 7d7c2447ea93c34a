#pragma once
// The best order for one stylist and some of the clients.

#include <array>
#include <cstdint>
#include <limits>
#include <unordered_map>
#include <vector>

#include "indexer/rules/running_order/calendar.h"

namespace quarterturn {

inline constexpr int no_limit = std::numeric_limits<std::int16_t>::max();
inline constexpr int not_at_all = 1'000'000;  // minutes late: it cannot be done

// A client with the limits of one search.
struct ChairJob {
    ChairWork work;
    int arrives = 0;
    int ready_by = 0;
    int latest_begin = no_limit;
    int earliest_end = 0;
    int latest_end = no_limit;
    bool first = false;  // of those with the same stylist
    bool last = false;

    bool operator==(const ChairJob&) const = default;
};

using JobSet = unsigned;  // a bit for each job

// Counts down over all searches of one plan.
struct SearchSteps {
    long left = 0;
};
struct OutOfSearchSteps {};

struct PlacedPart {
    int job = 0;
    SeatPart part = SeatPart::set;
    int begins = 0;
    int ends = 0;
};

// `jobs` and `steps` must outlive it. Searches throw OutOfSearchSteps.
class OneStylist {
  public:
    OneStylist(const std::vector<ChairJob>& jobs, const Calendar& calendar, SearchSteps& steps);

    // The least lateness added up, when nothing begins before `from`; exact when it is less than
    // `below`, otherwise some number from `below` on.
    int least_lateness(JobSet set, int from, int below);
    // An order with that lateness, which must be less than `below`.
    std::vector<PlacedPart> order(JobSet set, int from, int below);

  private:
    using Minutes = std::array<std::int16_t, most_in_the_chair>;
    // Has cooled, and may be left until it must be finished anyway.
    static constexpr std::int16_t at_will = -1;

    struct State {
        std::uint16_t open = 0;     // not begun
        std::uint16_t waiting = 0;  // set, not finished
        std::int16_t free = 0;      // when the stylist is
        Minutes set_at{};           // of those waiting, or at_will

        bool done() const { return open == 0 && waiting == 0; }
        bool operator==(const State&) const = default;
    };
    struct StateHash {
        std::size_t operator()(const State& state) const noexcept;
    };
    struct Move {
        std::int8_t job = 0;
        SeatPart part = SeatPart::set;
        std::int16_t begins = 0;
    };
    struct Known {
        int value = 0;  // exact, or at least this
        bool exact = false;
        Move best;          // when exact
        Minutes missing{};  // see search()
    };
    struct Moves {
        std::array<Move, most_in_the_chair> list;
        int count = 0;
        int beaten_from = no_limit;  // what begins here leaves room for another part before it
    };
    struct Best {
        int value;
        Move move;
    };

    int search(const State& state, int below, Minutes& missing);
    int least_possible(const State& state, Minutes& missing) const;
    bool can_keep_limits(const State& state) const;
    int latest_end(const State& state, int job) const;
    int set_from(const State& state, int job) const;
    void forget_what_cannot_matter(State& state) const;
    Moves moves_of(const State& state) const;
    void add_move(const State& state, int job, SeatPart part, Moves& moves) const;
    bool is_allowed(const State& state, int job, SeatPart part) const;
    int begin_of(const State& state, int job, SeatPart part) const;
    int minutes_of(int job, SeatPart part) const;
    bool ends_client(int job, SeatPart part) const;
    State after(const State& state, const Move& move) const;
    void try_last_part(const State& state, const Move& move, Best& best, Minutes& missing);
    void try_set(const State& state, Move move, Best& best, Minutes& missing);

    const std::vector<ChairJob>& jobs_;
    Calendar calendar_;
    SearchSteps& steps_;
    std::vector<std::uint16_t>
        alike_before_;  // of each job: those named before it with equal needs
    std::unordered_map<State, Known, StateHash> known_;
};

}  // namespace quarterturn
