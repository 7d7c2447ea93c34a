#include <algorithm>

#include "indexer/rules/running_order/every_set.h"

namespace quarterturn {
namespace {

constexpr int most_put_off = 20;  // sets; more are mostly put off for ever

class OrderPlacer {
  public:
    OrderPlacer(const std::vector<ChairJob>& jobs, const Calendar& calendar,
                const std::vector<OrderedPart>& order, int from)
        : jobs_(jobs), calendar_(calendar), order_(order), from_(from), parts_(order.size()) {
        not_before_.resize(order.size());
        set_at_.resize(jobs.size());
    }

    // A finish that comes too late puts its set off, and all is placed again from there on.
    std::vector<PlacedPart> run() {
        int put_off = 0;
        for (std::size_t i = 0; i < order_.size();) {
            if (!place(i)) return {};
            const std::size_t set = set_at_[static_cast<std::size_t>(order_[i].job)];
            const ChairJob& job = jobs_[static_cast<std::size_t>(order_[i].job)];
            const int excess = parts_[i].begins - parts_[set].ends - job.work.may_be_left;
            if (order_[i].part == SeatPart::finish && excess > 0) {
                if (work_between(set, i) > job.work.may_be_left || ++put_off > most_put_off) {
                    return {};
                }
                not_before_[set] = parts_[set].begins + excess;
                i = set;
            } else {
                ++i;
            }
        }
        return std::move(parts_);
    }

  private:
    int work_between(std::size_t set, std::size_t finish) const {
        int work = 0;
        for (std::size_t i = set + 1; i < finish; ++i) work += parts_[i].ends - parts_[i].begins;
        return work;
    }

    bool place(std::size_t i) {
        const OrderedPart& part = order_[i];
        const ChairJob& job = jobs_[static_cast<std::size_t>(part.job)];
        const bool set = part.part == SeatPart::set;
        const int minutes = set ? job.work.before : job.work.after;
        const bool ends_client = !set || !job.work.in_two_parts();
        int begins = std::max({from_, not_before_[i], i > 0 ? parts_[i - 1].ends : 0});
        if (set) {
            set_at_[static_cast<std::size_t>(part.job)] = i;
            begins = std::max(begins, job.arrives);
        } else {
            const std::size_t own = set_at_[static_cast<std::size_t>(part.job)];
            begins = std::max(begins, parts_[own].ends + job.work.cooling);
        }
        if (ends_client) begins = std::max(begins, job.earliest_end - minutes);
        begins = calendar_.place(begins, minutes);
        parts_[i] = {part.job, part.part, begins, begins + minutes};
        return begins + minutes <= (ends_client ? job.latest_end : no_limit) &&
               (!set || begins <= job.latest_begin);
    }

    const std::vector<ChairJob>& jobs_;
    const Calendar& calendar_;
    const std::vector<OrderedPart>& order_;
    int from_;
    std::vector<PlacedPart> parts_;
    std::vector<int> not_before_;
    std::vector<std::size_t> set_at_;
};

}  // namespace

std::vector<PlacedPart> in_order(const std::vector<ChairJob>& jobs, const Calendar& calendar,
                                 const std::vector<OrderedPart>& order, int from) {
    return OrderPlacer(jobs, calendar, order, from).run();
}

int lateness_of(const std::vector<ChairJob>& jobs, const std::vector<PlacedPart>& parts) {
    int late = 0;
    for (const PlacedPart& part : parts) {
        const ChairJob& job = jobs[static_cast<std::size_t>(part.job)];
        const bool ends = part.part == SeatPart::finish || !job.work.in_two_parts();
        if (ends) late += std::max(0, part.ends - job.ready_by);
    }
    return late;
}

}  // namespace quarterturn
