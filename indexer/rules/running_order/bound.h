#pragma once
// A bound on lateness: work of given minutes, done by whoever is free.

#include <algorithm>
#include <array>

#include "indexer/rules/running_order/one_stylist.h"

namespace quarterturn {

// The k-th client to be ready has at least the k smallest shares of work behind her, and is at
// least as late as the k-th earliest end possible; lateness added up is least when the k-th of
// these meets the k-th ready-by time.
class LatenessBound {
  public:
    void add(int work, int earliest_end, const ChairJob& job) {
        if (earliest_end > job.latest_end) impossible_ = true;
        work_[count_] = work;
        ends_[count_] = earliest_end;
        due_[count_] = job.ready_by;
        ++count_;
    }

    // `done(minutes)` says when that many minutes of work are done.
    template <class Done>
    int least(Done done) {
        if (impossible_) return not_at_all;
        sort(work_);
        sort(ends_);
        sort(due_);
        int late = 0;
        int sum = 0;
        for (int i = 0; i < count_; ++i) {
            sum += work_[i];
            late += std::max(0, std::max(done(sum), ends_[i]) - due_[i]);
        }
        return late;
    }

  private:
    template <class Values>
    void sort(Values& values) {
        std::sort(values.begin(), values.begin() + count_);
    }

    std::array<int, most_in_the_chair> work_{};
    std::array<int, most_in_the_chair> ends_{};
    std::array<int, most_in_the_chair> due_{};
    int count_ = 0;
    bool impossible_ = false;
};

}  // namespace quarterturn
