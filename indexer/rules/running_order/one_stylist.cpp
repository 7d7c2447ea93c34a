#include "indexer/rules/running_order/one_stylist.h"

#include <bit>

#include "indexer/rules/running_order/bound.h"
#include "indexer/rules/running_order/deadlines.h"

namespace quarterturn {
namespace {

constexpr std::int16_t none_missing = no_limit;

bool holds(unsigned set, int job) {
    return (set >> job & 1U) != 0;
}

unsigned bit(int job) {
    return 1U << job;
}

template <class Visit>
void for_each_in(unsigned set, Visit visit) {
    for (; set != 0; set &= set - 1) visit(std::countr_zero(set));
}

void note_missing(std::int16_t& missing, int minutes) {
    missing = static_cast<std::int16_t>(std::min<int>(missing, minutes));
}

}  // namespace

OneStylist::OneStylist(const std::vector<ChairJob>& jobs, const Calendar& calendar,
                       SearchSteps& steps)
    : jobs_(jobs), calendar_(calendar), steps_(steps) {
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        std::uint16_t alike = 0;
        for (std::size_t k = 0; k < i; ++k) {
            if (jobs[k] == jobs[i]) alike |= static_cast<std::uint16_t>(1U << k);
        }
        alike_before_.push_back(alike);
    }
}

std::size_t OneStylist::StateHash::operator()(const State& state) const noexcept {
    std::uint64_t hash = state.open | std::uint64_t{state.waiting} << 16U |
                         std::uint64_t{static_cast<std::uint16_t>(state.free)} << 32U;
    for_each_in(state.waiting, [&](int job) {
        hash = (hash ^ static_cast<std::uint16_t>(state.set_at[job])) * 0x9e3779b97f4a7c15ULL;
        hash ^= hash >> 29U;
    });
    hash *= 0xbf58476d1ce4e5b9ULL;
    return hash ^ hash >> 31U;
}

int OneStylist::minutes_of(int job, SeatPart part) const {
    return part == SeatPart::set ? jobs_[job].work.before : jobs_[job].work.after;
}

bool OneStylist::ends_client(int job, SeatPart part) const {
    return part == SeatPart::finish || !jobs_[job].work.in_two_parts();
}

bool OneStylist::is_allowed(const State& state, int job, SeatPart part) const {
    if (part == SeatPart::set) {
        if ((state.open & alike_before_[job]) != 0) return false;
        for (int other = 0; other < static_cast<int>(jobs_.size()); ++other) {
            if (other != job && jobs_[other].first && holds(state.open, other)) return false;
        }
    }
    const unsigned others = (state.open | state.waiting) & ~bit(job);
    return !(jobs_[job].last && ends_client(job, part) && others != 0);
}

int OneStylist::begin_of(const State& state, int job, SeatPart part) const {
    const ChairJob& wanted = jobs_[job];
    int from = state.free;
    if (part == SeatPart::set) {
        from = std::max(from, wanted.arrives);
    } else if (state.set_at[job] != at_will) {
        from = std::max(from, state.set_at[job] + wanted.work.cooling);
    }
    const int minutes = minutes_of(job, part);
    if (ends_client(job, part)) from = std::max(from, wanted.earliest_end - minutes);
    return calendar_.place(from, minutes);
}

void OneStylist::add_move(const State& state, int job, SeatPart part, Moves& moves) const {
    if (!is_allowed(state, job, part)) return;
    const int begins = begin_of(state, job, part);
    moves.list[moves.count++] = {static_cast<std::int8_t>(job), part,
                                 static_cast<std::int16_t>(begins)};
    // Who can be made ready while the stylist would stand idle, is: it delays nobody.
    if (ends_client(job, part)) {
        moves.beaten_from = std::min(moves.beaten_from, begins + minutes_of(job, part));
    }
}

OneStylist::Moves OneStylist::moves_of(const State& state) const {
    Moves moves;
    for_each_in(state.waiting, [&](int job) { add_move(state, job, SeatPart::finish, moves); });
    for_each_in(state.open, [&](int job) { add_move(state, job, SeatPart::set, moves); });
    const auto sooner = [&](const Move& left, const Move& right) {
        if (left.begins != right.begins) return left.begins < right.begins;
        return jobs_[left.job].ready_by < jobs_[right.job].ready_by;
    };
    for (int i = 1; i < moves.count; ++i) {  // std::stable_sort asks for memory each time
        for (int k = i; k > 0 && sooner(moves.list[k], moves.list[k - 1]); --k) {
            std::swap(moves.list[k], moves.list[k - 1]);
        }
    }
    return moves;
}

OneStylist::State OneStylist::after(const State& state, const Move& move) const {
    State next = state;
    next.free = static_cast<std::int16_t>(move.begins + minutes_of(move.job, move.part));
    next.open = static_cast<std::uint16_t>(next.open & ~bit(move.job));
    next.waiting = static_cast<std::uint16_t>(next.waiting & ~bit(move.job));
    next.set_at[move.job] = 0;
    if (!ends_client(move.job, move.part)) {
        next.waiting = static_cast<std::uint16_t>(next.waiting | bit(move.job));
        next.set_at[move.job] = next.free;
    }
    forget_what_cannot_matter(next);
    return next;
}

void OneStylist::forget_what_cannot_matter(State& state) const {
    for_each_in(state.waiting, [&](int i) {
        const ChairJob& job = jobs_[i];
        std::int16_t& set_at = state.set_at[i];
        if (set_at == at_will || set_at + job.work.cooling > state.free) return;
        if (set_at + job.work.may_be_left >= job.latest_end - job.work.after) set_at = at_will;
    });
}

// She who is last ends after everybody else.
int OneStylist::latest_end(const State& state, int job) const {
    int latest = jobs_[job].latest_end;
    for_each_in(state.open | state.waiting, [&](int other) {
        const ChairJob& last = jobs_[other];
        if (!last.last || other == job) return;
        const int minutes = last.work.in_two_parts() ? last.work.after : last.work.before;
        latest = std::min(latest, last.latest_end - minutes);
    });
    return latest;
}

bool OneStylist::can_keep_limits(const State& state) const {
    Deadlines deadlines;
    for (const Break& pause : calendar_.breaks()) {
        if (pause.ends <= state.free) continue;
        const int begins = std::max<int>(pause.begins, state.free);
        deadlines.add(begins, pause.ends - begins, pause.ends);
    }
    for_each_in(state.waiting, [&](int i) {
        deadlines.add(begin_of(state, i, SeatPart::finish), jobs_[i].work.after,
                      latest_end(state, i));
    });
    for_each_in(state.open, [&](int i) {
        const ChairJob& job = jobs_[i];
        const int from = std::max<int>(state.free, job.arrives);
        const int ends = latest_end(state, i);
        const int finish = job.work.in_two_parts() ? job.work.after + job.work.cooling : 0;
        deadlines.add(from, job.work.before,
                      std::min(ends - finish, job.latest_begin + job.work.before));
        if (finish == 0) return;
        deadlines.add(from + job.work.before + job.work.cooling, job.work.after, ends);
    });
    return deadlines.can_be_kept();
}

int OneStylist::least_possible(const State& state, Minutes& missing) const {
    LatenessBound bound;
    bool left_too_long = false;
    for_each_in(state.waiting, [&](int i) {
        const ChairJob& job = jobs_[i];
        const int begins = begin_of(state, i, SeatPart::finish);
        const int excess = begins - state.set_at[i] - job.work.may_be_left;
        if (state.set_at[i] != at_will && excess > 0) {
            note_missing(missing[i], excess);
            left_too_long = true;
        }
        bound.add(job.work.after, begins + job.work.after, job);
    });
    if (left_too_long || !can_keep_limits(state)) return not_at_all;
    for_each_in(state.open, [&](int i) {
        const ChairJob& job = jobs_[i];
        const int set = std::max<int>(state.free, job.arrives) + job.work.before;
        const int ends = job.work.in_two_parts() ? set + job.work.cooling + job.work.after : set;
        bound.add(job.work.hands_on(), std::max(ends, job.earliest_end), job);
    });
    return bound.least([&](int minutes) { return calendar_.after_work(state.free, minutes); });
}

// The part after which the client is ready.
void OneStylist::try_last_part(const State& state, const Move& move, Best& best, Minutes& missing) {
    const ChairJob& job = jobs_[move.job];
    const int ends = move.begins + minutes_of(move.job, move.part);
    if (ends > job.latest_end || (move.part == SeatPart::set && move.begins > job.latest_begin))
        return;
    const int late = std::max(0, ends - job.ready_by);
    const int value = late + search(after(state, move), best.value - late, missing);
    if (value < best.value) best = {value, move};
}

// A set is begun as early as can be, and later only by what a finish that came too late was
// missing, the least of them first.
void OneStylist::try_set(const State& state, Move move, Best& best, Minutes& missing) {
    const ChairJob& job = jobs_[move.job];
    const int from_begin_to_end = job.work.hands_on() + job.work.cooling;
    while (move.begins <= job.latest_begin && move.begins + from_begin_to_end <= job.latest_end) {
        Minutes below_it;
        below_it.fill(none_missing);
        const int value = search(after(state, move), best.value, below_it);
        if (value < best.value) best = {value, move};
        const int own = below_it[move.job];
        for_each_in(state.waiting, [&](int i) { note_missing(missing[i], below_it[i]); });
        if (own == none_missing || best.value == 0) return;
        move.begins =
            static_cast<std::int16_t>(calendar_.place(move.begins + own, job.work.before));
    }
}

// The least lateness from here on. `missing` tells of each set that waits by how much its finish
// came too late at least, in the orders that failed for that alone.
int OneStylist::search(const State& state, int below, Minutes& missing) {
    if (state.done()) return 0;
    if (below <= 0) return not_at_all;
    const auto seen = known_.find(state);
    if (seen != known_.end() && (seen->second.exact || seen->second.value >= below)) {
        for_each_in(state.waiting,
                    [&](int i) { note_missing(missing[i], seen->second.missing[i]); });
        return seen->second.value;
    }
    const int bound = least_possible(state, missing);
    if (bound >= below) return bound;
    if (--steps_.left < 0) throw OutOfSearchSteps{};
    Minutes found;
    found.fill(none_missing);
    Best best{below, {}};
    const Moves moves = moves_of(state);
    for (int i = 0; i < moves.count && best.value > bound; ++i) {
        const Move& move = moves.list[i];
        if (move.begins >= moves.beaten_from) break;
        if (ends_client(move.job, move.part)) {
            try_last_part(state, move, best, found);
        } else {
            try_set(state, move, best, found);
        }
    }
    for_each_in(state.waiting, [&](int i) { note_missing(missing[i], found[i]); });
    known_.insert_or_assign(state, Known{best.value, best.value < below, best.move, found});
    return best.value;
}

int OneStylist::least_lateness(JobSet set, int from, int below) {
    State start;
    start.open = static_cast<std::uint16_t>(set);
    start.free = static_cast<std::int16_t>(std::max(from, calendar_.arrives()));
    Minutes missing;
    missing.fill(none_missing);
    return search(start, below, missing);
}

std::vector<PlacedPart> OneStylist::order(JobSet set, int from, int below) {
    least_lateness(set, from, below);
    State state;
    state.open = static_cast<std::uint16_t>(set);
    state.free = static_cast<std::int16_t>(std::max(from, calendar_.arrives()));
    std::vector<PlacedPart> parts;
    while (!state.done()) {
        const Move move = known_.at(state).best;
        state = after(state, move);
        parts.push_back({move.job, move.part, move.begins, state.free});
    }
    return parts;
}

}  // namespace quarterturn
