#pragma once
// The best orders of one stylist: bounds from all sets in one go, and where a bound is not reached
// by an order, the exact search.

#include <map>

#include "indexer/rules/running_order/every_set.h"

namespace quarterturn {

// `jobs` and `steps` must outlive it. Searches throw OutOfSearchSteps.
class BestOrders {
  public:
    BestOrders(const std::vector<ChairJob>& jobs, const Calendar& calendar, SearchSteps& steps);

    // The least lateness added up, when nothing begins before `from`; exact when it is less than
    // `below`, otherwise some number from `below` on.
    int least_lateness(JobSet set, int from, int below);
    // An order with that lateness, which must be less than `below`.
    std::vector<PlacedPart> order(JobSet set, int from, int below);

    // An order found elsewhere.
    void remember(JobSet set, int from, std::vector<PlacedPart> parts);

    // Looks at all sets of `all` in one go, as in EverySet.
    void look_at_all(JobSet all, int from, int below, OtherStylists others);
    // Of a set in that look: not_at_all, or a bound.
    int at_least(JobSet set) const { return every_set_.at_least(set); }
    // least_lateness() of such a set, by what was seen in that look if that will do.
    int settle(JobSet set, int below);

  private:
    struct Found {
        int at_least = 0;
        int late = not_at_all;  // of the best order known
        std::vector<PlacedPart> parts;
    };

    const Found& find(JobSet set, int from, int below);
    std::vector<PlacedPart> placed(const EverySet& search, JobSet set, int from) const;

    const std::vector<ChairJob>& jobs_;
    Calendar calendar_;
    EverySet every_set_;  // as it was looked at last
    EverySet one_set_;
    OneStylist one_;
    int looked_from_ = 0;
    std::map<std::pair<JobSet, int>, Found> found_;  // by set and `from`
};

}  // namespace quarterturn
