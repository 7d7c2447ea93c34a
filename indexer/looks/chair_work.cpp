#include <algorithm>

#include "indexer/looks/running_order.h"

namespace quarterturn {
namespace {

int wait_after(const Step& step) {
    return std::max(
        {0, step.waiting_minutes.value_or(0), step.setting.cooling_minutes.value_or(0)});
}

std::size_t longest_wait(const std::vector<Step>& build) {
    std::size_t longest = 0;
    for (std::size_t i = 1; i < build.size(); ++i) {
        if (wait_after(build[i]) > wait_after(build[longest])) longest = i;
    }
    return longest;
}

int hands_on(const Step& step) {
    return std::max(0, step.minutes.value_or(0));
}

}  // namespace

std::optional<int> may_be_left_in(const Recipe& recipe) {
    if (recipe.build.empty()) return recipe.setting.may_be_left_minutes;
    const Setting& setting = recipe.build[longest_wait(recipe.build)].setting;
    return setting.may_be_left_minutes ? setting.may_be_left_minutes
                                       : recipe.setting.may_be_left_minutes;
}

std::optional<ChairWork> chair_work(const Recipe& recipe) {
    const auto& build = recipe.build;
    const std::size_t set = longest_wait(build);
    const bool waits = !build.empty() && wait_after(build[set]) > 0;
    ChairWork work;
    int in_steps = 0;
    int other_waits = 0;
    for (std::size_t i = 0; i < build.size(); ++i) {
        (waits && i > set ? work.after : work.before) += hands_on(build[i]);
        in_steps += hands_on(build[i]);
        if (!waits || i != set) other_waits += wait_after(build[i]);
    }
    work.before += std::max(0, recipe.hands_on_minutes.value_or(0) - in_steps);
    if (work.hands_on() == 0) return std::nullopt;
    if (!waits) {
        work.before += std::max(0, recipe.waiting_minutes.value_or(0));
        return work;
    }
    work.before = std::max(1, work.before + other_waits);
    work.after = std::max(1, work.after);
    work.cooling = std::max(wait_after(build[set]), recipe.setting.cooling_minutes.value_or(0));
    work.may_be_left = std::max(work.cooling, may_be_left_in(recipe).value_or(usual_may_be_left));
    return work;
}

}  // namespace quarterturn
