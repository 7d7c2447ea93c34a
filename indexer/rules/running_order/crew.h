#pragma once
// The best division of the clients among the stylists, within the limits of their jobs.

#include <memory>
#include <optional>
#include <vector>

#include "indexer/rules/running_order/best_orders.h"
#include "indexer/rules/running_order/tried_changes.h"

namespace quarterturn {

struct Division {
    int late_in_all = 0;
    std::vector<JobSet> sets;  // of each stylist
};

// Searches throw OutOfSearchSteps.
class Crew {
  public:
    Crew(std::vector<ChairJob> jobs, std::vector<Calendar> calendars, SearchSteps& steps);
    Crew(const Crew&) = delete;
    Crew& operator=(const Crew&) = delete;

    // The best one that begins at `from` or later and is less than `below` late in all, or the
    // first one found that is no more than `enough`.
    std::optional<Division> divide(int from, int below, int enough);
    // Whether steps ran out after a good one was found, so that a better one may be left.
    bool cut_off() const { return cut_off_; }
    std::vector<PlacedPart> order(int stylist, JobSet set, int from, int below);
    // Of one stylist's clients alone; exact when less than `below`.
    int least_lateness(int stylist, JobSet set, int from, int below);

  private:
    bool like_the_one_before(std::size_t stylist) const;
    std::vector<LatenessTable> rough_tables(int from, int below) const;
    void look_at_all(const std::vector<LatenessTable>& rough, std::vector<LatenessTable>& tables,
                     int from, int below);
    OtherStylists others_than(std::size_t stylist, const std::vector<LatenessTable>& rough,
                              const std::vector<LatenessTable>& tables, int from, int below) const;
    bool settle(const Division& division, std::vector<LatenessTable>& tables, int below);
    std::optional<Division> exactly(const std::vector<LatenessTable>& rough, int from, int below);
    std::optional<Division> join(const std::vector<LatenessTable>& tables, int below) const;

    std::vector<ChairJob> jobs_;
    std::vector<Calendar> calendars_;
    SearchSteps& steps_;
    bool cut_off_ = false;
    std::vector<std::shared_ptr<BestOrders>> stylists_;  // those with equal hours share one
    JobSet all_;
};

}  // namespace quarterturn
