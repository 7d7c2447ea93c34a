#include "indexer/looks/known_plans.h"

#include <algorithm>
#include <deque>
#include <mutex>

namespace quarterturn {
namespace {

constexpr std::size_t most_plans = 8;

struct KnownPlans {
    std::mutex mutex;
    std::deque<std::pair<MorningNeeds, RunningOrder>> plans;  // the newest first
};

KnownPlans& known_plans() {
    static KnownPlans plans;
    return plans;
}

std::optional<RunningOrder> remembered(const MorningNeeds& needs) {
    KnownPlans& known = known_plans();
    const std::lock_guard lock(known.mutex);
    const auto found =
        std::ranges::find(known.plans, needs, &std::pair<MorningNeeds, RunningOrder>::first);
    if (found == known.plans.end()) return std::nullopt;
    return found->second;
}

void remember(const MorningNeeds& needs, const RunningOrder& order) {
    KnownPlans& known = known_plans();
    const std::lock_guard lock(known.mutex);
    known.plans.emplace_front(needs, order);
    if (known.plans.size() > most_plans) known.plans.pop_back();
}

}  // namespace

RunningOrder known_plan(const MorningNeeds& needs) {
    if (const auto known = remembered(needs)) return *known;
    const RunningOrder order = plan_morning(needs);
    remember(needs, order);
    return order;
}

}  // namespace quarterturn
