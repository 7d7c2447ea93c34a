#pragma once
// A good division found by chance: orders are changed here and there, and what is no later is kept.
// The same numbers are drawn each time, so equal needs give equal plans.

#include <random>

#include "indexer/rules/running_order/every_set.h"

namespace quarterturn {

struct TriedOrders {
    int late_in_all = not_at_all;
    std::vector<JobSet> sets;  // of each stylist
    std::vector<std::vector<PlacedPart>> parts;
};

class TriedChanges {
  public:
    TriedChanges(const std::vector<ChairJob>& jobs, const std::vector<Calendar>& calendars,
                 int from);

    // Stops before `tries` when the lateness is no more than `enough`.
    TriedOrders run(int tries, int enough);

  private:
    using Order = std::vector<OrderedPart>;

    void begin();
    int badness_of(std::size_t stylist, const Order& order) const;
    TriedOrders as_kept() const;
    void change_one();
    void change_two();
    void keep_if_no_later(std::size_t one, Order&& first, std::size_t other, Order&& second);
    void put_in(Order& order, int job);
    bool may_be(const Order& order) const;
    std::size_t draw(std::size_t count) { return random_() % count; }

    const std::vector<ChairJob>& jobs_;
    const std::vector<Calendar>& calendars_;
    int from_;
    std::vector<ChairJob> without_ends_;  // jobs whose latest end is not kept to yet
    std::mt19937 random_;
    std::vector<Order> orders_;
    std::vector<int> badness_;  // of each: minutes late, more where a latest end is broken
    int allowed_ = 0;           // minutes by which a change may make it worse
};

}  // namespace quarterturn
