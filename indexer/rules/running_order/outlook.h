#pragma once
// How late those not begun yet must be at least.
//
// Of one stylist's clients, in the order in which they are ready, each is ready no sooner than the
// hands-on work of all before her and her own is done; cooling, and what was done of her already
// while others cooled, are left out. So the least lateness of a set follows from those of the sets
// with one fewer.

#include <vector>

#include "indexer/rules/running_order/one_stylist.h"

namespace quarterturn {

using LatenessTable = std::vector<int>;  // by set of jobs

// Of what the stylists do beside the one who is looked at.
struct OtherStylists {
    int count = 0;
    int from = 0;         // when the first of them may begin
    LatenessTable late;   // at least, for what they do in the whole plan
    LatenessTable rough;  // at least, by hands-on work alone
};

// The least lateness of each set done by one stylist from `from` on; `below` where it is no less.
LatenessTable lateness_by_work(const std::vector<ChairJob>& jobs, const Calendar& calendar,
                               int from, int below);

// The least lateness of each set divided between two, by their tables.
LatenessTable joined(const LatenessTable& one, const LatenessTable& other, int below);

// `jobs` must outlive it.
class Outlook {
  public:
    Outlook(const std::vector<ChairJob>& jobs, const Calendar& calendar, int from, int below,
            OtherStylists others);

    // Of the jobs in `open` when she is free at `free`: she does some, the others the rest. She who
    // is last in the whole plan is not ready before anybody else. No more than `below`.
    int least(JobSet open, int free);
    // She does none of them, and has worked until `free`.
    int left_to_others(JobSet open, int free) const;
    // The earliest at which the others have done all of `set`.
    int others_end(JobSet set) const;
    bool anybody_else() const { return others_.count > 0; }

  private:
    int least_with_first(int job, JobSet open, int minute, int below);

    const std::vector<ChairJob>& jobs_;
    int from_;
    int below_;
    OtherStylists others_;
    JobSet last_ = 0;                               // she who is last, if anybody is
    std::vector<int> earliest_end_;                 // of each job
    std::vector<std::vector<int>> ends_;            // of each job by the minute its stylist is free
    std::vector<int> work_;                         // of each set
    std::vector<std::vector<std::int16_t>> known_;  // least() of each set by minute
};

}  // namespace quarterturn
