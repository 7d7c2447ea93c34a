#include "indexer/rules/running_order/every_set.h"

#include <algorithm>
#include <bit>

namespace quarterturn {
namespace {

constexpr JobSet only(int job) {
    return JobSet{1} << job;
}

template <class Visit>
void each_in(JobSet set, Visit visit) {
    for (; set != 0; set &= set - 1) visit(std::countr_zero(set));
}

// One stylist may do `before` before `after`: were they the other way round, they could change
// places and nobody would be later.
bool goes_before(const ChairJob& before, const ChairJob& after) {
    return before.work == after.work && before.arrives <= after.arrives &&
           before.ready_by <= after.ready_by && before.latest_end <= after.latest_end &&
           before.latest_begin == after.latest_begin && before.earliest_end == after.earliest_end &&
           !before.first && !before.last && !after.first && !after.last;
}

}  // namespace

EverySet::EverySet(const std::vector<ChairJob>& jobs, const Calendar& calendar, SearchSteps& steps)
    : jobs_(jobs), calendar_(calendar), steps_(steps) {
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        JobSet others = 0;
        for (std::size_t k = 0; k < jobs.size(); ++k) {
            const bool alike = goes_before(jobs[k], jobs[i]);
            if (i != k && goes_before(jobs[i], jobs[k]) && (!alike || i < k)) {
                others |= only(static_cast<int>(k));
            }
        }
        not_after_.push_back(others);
    }
}

// All groups of the former search are empty.
void EverySet::number_groups() {
    ternary_.assign(std::size_t{1} << jobs_.size(), 0);
    std::vector<int> digits(jobs_.size(), 0);
    int digit = 1;
    each_in(within_, [&](int job) {
        digits[static_cast<std::size_t>(job)] = digit;
        digit *= 3;
    });
    for (JobSet set = 1; set < ternary_.size(); ++set) {
        const auto job = static_cast<std::size_t>(std::countr_zero(set));
        ternary_[set] = ternary_[set & (set - 1)] + digits[job];
    }
    groups_.resize(std::max(groups_.size(), static_cast<std::size_t>(digit)), -1);
}

int EverySet::minutes_of(int job, SeatPart part) const {
    const ChairWork& work = jobs_[static_cast<std::size_t>(job)].work;
    return part == SeatPart::set ? work.before : work.after;
}

bool EverySet::ends_client(int job, SeatPart part) const {
    return part == SeatPart::finish || !jobs_[static_cast<std::size_t>(job)].work.in_two_parts();
}

void EverySet::search(JobSet within, int from, int below, OtherStylists others) {
    for (const Label& label : next_) group_of(label) = -1;  // where a search was broken off
    within_ = within;
    below_ = below;
    number_groups();
    outlook_.emplace(jobs_, calendar_, from, below, std::move(others));
    traces_.clear();
    reached_.clear();
    reached_[0] = {0, -1};
    Label start;
    start.free = static_cast<std::int16_t>(std::max(from, calendar_.arrives()));
    next_.assign(1, start);
    while (!next_.empty()) {
        labels_.swap(next_);
        next_.clear();
        for (const Label& label : labels_) group_of(label) = -1;
        for (const Label& label : labels_) {
            if (label.late >= 0) go_on(label);
        }
    }
}

void EverySet::go_on(const Label& label) {
    if (--steps_.left < 0) throw OutOfSearchSteps{};
    if (label.waiting == 0) {
        Reached& reached = reached_[label.done];
        if (label.late < reached.late) reached = {label.late, label.trace};
    }
    if (label.ended) return;
    each_in(label.waiting, [&](int job) { place(label, job, SeatPart::finish); });
    each_in(within_ & ~JobSet{label.done} & ~JobSet{label.waiting}, [&](int job) {
        if (may_set(label, job)) place(label, job, SeatPart::set);
    });
}

bool EverySet::may_set(const Label& label, int job) const {
    const JobSet taken = JobSet{label.done} | label.waiting;
    if (jobs_[static_cast<std::size_t>(job)].first && taken != 0) return false;
    return (not_after_[static_cast<std::size_t>(job)] & taken) == 0;
}

int EverySet::begin_of(const Label& label, int job, SeatPart part) const {
    const ChairJob& wanted = jobs_[static_cast<std::size_t>(job)];
    int from = label.free;
    if (part == SeatPart::set) {
        from = std::max(from, wanted.arrives);
    } else {
        from = std::max<int>(from, label.ready[static_cast<std::size_t>(job)]);
    }
    const int minutes = minutes_of(job, part);
    if (ends_client(job, part)) from = std::max(from, wanted.earliest_end - minutes);
    return calendar_.place(from, minutes);
}

void EverySet::place(const Label& label, int job, SeatPart part) {
    const ChairJob& wanted = jobs_[static_cast<std::size_t>(job)];
    const int begins = begin_of(label, job, part);
    const int minutes = minutes_of(job, part);
    if (part == SeatPart::set && begins > wanted.latest_begin) return;
    Label after = label;
    after.free = static_cast<std::int16_t>(begins + minutes);
    if (ends_client(job, part)) {
        if (after.free > wanted.latest_end) return;
        if (wanted.last && (label.waiting & ~only(job)) != 0) return;
        after.late += std::max(0, after.free - wanted.ready_by);
        after.waiting = static_cast<std::uint16_t>(after.waiting & ~only(job));
        after.done = static_cast<std::uint16_t>(after.done | only(job));
        after.ready[static_cast<std::size_t>(job)] = 0;
        after.since[static_cast<std::size_t>(job)] = 0;
        if (wanted.last) after.ended = true;
        if (!passes(after, job, minutes)) return;
    } else {
        if (!passes(after, job, minutes)) return;
        after.waiting = static_cast<std::uint16_t>(after.waiting | only(job));
        after.ready[static_cast<std::size_t>(job)] =
            static_cast<std::int16_t>(after.free + wanted.work.cooling);
    }
    keep(after, label.trace, job, part);
}

// Everybody else's set has that much more work after it, and may be left no longer than it may.
bool EverySet::passes(Label& label, int job, int minutes) const {
    bool can_be = true;
    each_in(label.waiting & ~only(job), [&](int other) {
        const auto i = static_cast<std::size_t>(other);
        label.since[i] = static_cast<std::int16_t>(label.since[i] + minutes);
        if (label.since[i] > jobs_[i].work.may_be_left) can_be = false;
        if (label.ready[i] <= label.free) label.ready[i] = 0;
    });
    return can_be;
}

// With all that is left, by her and the others.
bool EverySet::is_too_late(const Label& label) {
    const JobSet open = within_ & ~JobSet{label.done} & ~JobSet{label.waiting};
    if (label.ended) {
        return label.late + outlook_->left_to_others(open, label.free) >= below_;
    }
    int late = label.late;
    each_in(label.waiting, [&](int job) {
        const ChairJob& one = jobs_[static_cast<std::size_t>(job)];
        const int ends = begin_of(label, job, SeatPart::finish) + one.work.after;
        late += ends > one.latest_end ? not_at_all : std::max(0, ends - one.ready_by);
    });
    return late >= below_ || late + outlook_->least(open, label.free) >= below_;
}

bool EverySet::is_no_worse(const Label& one, const Label& other) const {
    if (one.free > other.free || one.late > other.late) return false;
    for (JobSet set = one.waiting; set != 0; set &= set - 1) {
        const auto i = static_cast<std::size_t>(std::countr_zero(set));
        if (one.since[i] > other.since[i]) return false;
        if (one.ready[i] > std::max(other.ready[i], other.free)) return false;
    }
    return true;
}

int& EverySet::group_of(const Label& label) {
    const int done = ternary_[label.done];
    return groups_[static_cast<std::size_t>(done + 2 * ternary_[label.waiting])];
}

// By one that did the same parts; those that it beats go no further.
bool EverySet::is_beaten(const Label& label, int first) {
    for (int i = first; i >= 0; i = next_[static_cast<std::size_t>(i)].next) {
        Label& other = next_[static_cast<std::size_t>(i)];
        if (other.late < 0) continue;
        if (is_no_worse(other, label)) return true;
        if (is_no_worse(label, other)) other.late = -1;
    }
    return false;
}

void EverySet::keep(Label label, int before, int job, SeatPart part) {
    if (label.late >= below_) return;
    int& group = group_of(label);
    const int first = group;
    if (is_beaten(label, first) || is_too_late(label)) return;
    label.next = first;
    label.trace = static_cast<int>(traces_.size());
    traces_.push_back({before, static_cast<std::int8_t>(job), part});
    group = static_cast<int>(next_.size());
    next_.push_back(label);
}

int EverySet::at_least(JobSet set) const {
    const auto found = reached_.find(set);
    return found == reached_.end() ? not_at_all : found->second.late;
}

std::vector<OrderedPart> EverySet::order(JobSet set) const {
    std::vector<OrderedPart> parts;
    for (int at = reached_.at(set).trace; at >= 0;) {
        const Trace& trace = traces_[static_cast<std::size_t>(at)];
        parts.push_back({trace.job, trace.part});
        at = trace.before;
    }
    std::ranges::reverse(parts);
    return parts;
}

}  // namespace quarterturn
