#include "indexer/rules/running_order/best_orders.h"

#include <algorithm>

namespace quarterturn {

BestOrders::BestOrders(const std::vector<ChairJob>& jobs, const Calendar& calendar,
                       SearchSteps& steps)
    : jobs_(jobs),
      calendar_(calendar),
      every_set_(jobs, calendar, steps),
      one_set_(jobs, calendar, steps),
      one_(jobs, calendar, steps) {}

std::vector<PlacedPart> BestOrders::placed(const EverySet& search, JobSet set, int from) const {
    return in_order(jobs_, calendar_, search.order(set), from);
}

void BestOrders::remember(JobSet set, int from, std::vector<PlacedPart> parts) {
    Found& found = found_[{set, from}];
    const int late = set == 0 ? 0 : parts.empty() ? not_at_all : lateness_of(jobs_, parts);
    if (late < found.late) {
        found.late = late;
        found.parts = std::move(parts);
    }
}

// Goes on until the best order known is as little late as can be, or `below` cannot be reached.
const BestOrders::Found& BestOrders::find(JobSet set, int from, int below) {
    Found& found = found_[{set, from}];
    if (set == 0) found.late = 0;
    const int wanted = std::min(below, found.late);
    if (found.at_least >= wanted) return found;
    one_set_.search(set, from, wanted, {});
    found.at_least = std::min(wanted, one_set_.at_least(set));
    if (found.at_least == wanted) return found;
    remember(set, from, placed(one_set_, set, from));
    const int still = std::min(wanted, found.late);
    if (found.at_least == still) return found;
    const int least = one_.least_lateness(set, from, still);
    if (least < still) remember(set, from, one_.order(set, from, still));
    found.at_least = std::min(least, still);
    return found;
}

int BestOrders::least_lateness(JobSet set, int from, int below) {
    const Found& found = find(set, from, below);
    return found.late < below ? found.late : below;
}

std::vector<PlacedPart> BestOrders::order(JobSet set, int from, int below) {
    const Found& found = found_[{set, from}];
    return found.late < below ? found.parts : find(set, from, below).parts;
}

void BestOrders::look_at_all(JobSet all, int from, int below, OtherStylists others) {
    looked_from_ = from;
    every_set_.search(all, from, below, std::move(others));
}

int BestOrders::settle(JobSet set, int below) {
    Found& found = found_[{set, looked_from_}];
    found.at_least = std::max(found.at_least, at_least(set));
    if (set != 0 && found.late > found.at_least) {
        remember(set, looked_from_, placed(every_set_, set, looked_from_));
    }
    return least_lateness(set, looked_from_, below);
}

}  // namespace quarterturn
