#include "indexer/rules/running_order/outlook.h"

#include <algorithm>
#include <bit>

namespace quarterturn {
namespace {

constexpr int minutes_ahead = 12 * 60;    // later minutes count as the last of them
constexpr std::size_t more_minutes = 32;  // remembered at a time
constexpr std::int16_t not_known = -1;

std::vector<int> work_of_sets(const std::vector<ChairJob>& jobs) {
    std::vector<int> work(std::size_t{1} << jobs.size(), 0);
    for (JobSet set = 1; set < work.size(); ++set) {
        const auto job = static_cast<std::size_t>(std::countr_zero(set));
        work[set] = work[set & (set - 1)] + jobs[job].work.hands_on();
    }
    return work;
}

JobSet who_is_last(const std::vector<ChairJob>& jobs) {
    const auto last = std::ranges::find(jobs, true, &ChairJob::last);
    return last == jobs.end() ? 0 : JobSet{1} << (last - jobs.begin());
}

int earliest_end(const ChairJob& job, int from) {
    const int alone = std::max(from, job.arrives) + job.work.hands_on() +
                      (job.work.in_two_parts() ? job.work.cooling : 0);
    return std::max(alone, job.earliest_end);
}

int lateness(const ChairJob& job, int ends) {
    return ends > job.latest_end ? not_at_all : std::max(0, ends - job.ready_by);
}

}  // namespace

LatenessTable lateness_by_work(const std::vector<ChairJob>& jobs, const Calendar& calendar,
                               int from, int below) {
    const std::vector<int> work = work_of_sets(jobs);
    const JobSet last = who_is_last(jobs);
    const int begins = std::max(from, calendar.arrives());
    LatenessTable table(work.size(), below);
    table[0] = 0;
    for (JobSet set = 1; set < table.size(); ++set) {
        const int done = calendar.after_work(begins, work[set]);
        for (JobSet may_end = (set & last) != 0 ? last : set; may_end != 0;
             may_end &= may_end - 1) {
            const ChairJob& job = jobs[static_cast<std::size_t>(std::countr_zero(may_end))];
            const JobSet before = set & ~(may_end & -may_end);
            const int late = lateness(job, std::max(done, earliest_end(job, begins)));
            table[set] = std::min(table[set], table[before] + late);
        }
    }
    return table;
}

LatenessTable joined(const LatenessTable& one, const LatenessTable& other, int below) {
    LatenessTable table(one.size(), below);
    const auto all = static_cast<JobSet>(table.size() - 1);
    for (JobSet own = 0; own <= all; ++own) {
        if (other[own] >= below) continue;
        const JobSet left = all & ~own;
        for (JobSet rest = left;; rest = (rest - 1) & left) {
            table[own | rest] = std::min(table[own | rest], one[rest] + other[own]);
            if (rest == 0) break;
        }
    }
    return table;
}

Outlook::Outlook(const std::vector<ChairJob>& jobs, const Calendar& calendar, int from, int below,
                 OtherStylists others)
    : jobs_(jobs),
      from_(std::max(from, calendar.arrives())),
      below_(below),
      others_(std::move(others)),
      last_(who_is_last(jobs)),
      work_(work_of_sets(jobs)),
      known_(work_.size()) {
    for (const ChairJob& job : jobs) {
        earliest_end_.push_back(earliest_end(job, from_));
        std::vector<int>& ends = ends_.emplace_back();
        for (int minute = 0; minute < minutes_ahead; ++minute) {
            ends.push_back(calendar.after_work(from_ + minute, job.work.hands_on()));
        }
    }
}

int Outlook::others_end(JobSet set) const {
    return set == 0 ? 0 : others_.from + (work_[set] + others_.count - 1) / others_.count;
}

int Outlook::left_to_others(JobSet open, int free) const {
    if (open == 0) return 0;
    if (!anybody_else()) return below_;
    if ((open & last_) == 0) return others_.late[open];
    const ChairJob& last = jobs_[static_cast<std::size_t>(std::countr_zero(last_))];
    const int ends = std::max({free, others_end(open), earliest_end(last, others_.from)});
    const int rough = others_.rough[open & ~last_] + lateness(last, ends);
    return std::min(below_, std::max(others_.late[open], rough));
}

// When `job` is the next of hers to be ready; some number from `below` on where it is no less.
int Outlook::least_with_first(int job, JobSet open, int minute, int below) {
    const auto i = static_cast<std::size_t>(job);
    const JobSet rest = open & ~(JobSet{1} << job);
    const int free = ends_[i][static_cast<std::size_t>(minute)];
    int ends = std::max(free, earliest_end_[i]);
    if (jobs_[i].last && anybody_else()) ends = std::max(ends, others_end(rest));
    const int late = lateness(jobs_[i], ends);
    if (late >= below) return late;
    return late + (jobs_[i].last ? left_to_others(rest, free) : least(rest, free));
}

int Outlook::least(JobSet open, int free) {
    if (open == 0) return 0;
    const int minute = std::clamp(free - from_, 0, minutes_ahead - 1);
    auto& known = known_[open];
    const auto at = static_cast<std::size_t>(minute);
    if (at >= known.size()) known.resize(at + more_minutes, not_known);
    if (known[at] != not_known) return known[at];
    int best = std::min(no_limit, left_to_others(open, free));
    for (JobSet next = open; next != 0 && best > 0; next &= next - 1) {
        best = std::min(best, least_with_first(std::countr_zero(next), open, minute, best));
    }
    known[at] = static_cast<std::int16_t>(best);
    return best;
}

}  // namespace quarterturn
