#include "indexer/rules/running_order/tried_changes.h"

#include <algorithm>
#include <numeric>

namespace quarterturn {
namespace {

constexpr double most_allowed = 60;  // minutes
constexpr int a_broken_end = 3;      // as bad as so many minutes late, for each minute

}  // namespace

TriedChanges::TriedChanges(const std::vector<ChairJob>& jobs,
                           const std::vector<Calendar>& calendars, int from)
    : jobs_(jobs),
      calendars_(calendars),
      from_(from),
      without_ends_(jobs),
      orders_(calendars.size()) {
    for (ChairJob& job : without_ends_) job.latest_end = no_limit;
    begin();
    for (std::size_t i = 0; i < orders_.size(); ++i) badness_.push_back(badness_of(i, orders_[i]));
}

// By the ready-by times, to whoever has the least to do.
void TriedChanges::begin() {
    std::vector<int> jobs(jobs_.size());
    std::iota(jobs.begin(), jobs.end(), 0);
    std::ranges::stable_sort(jobs, {}, [&](int job) {
        const ChairJob& one = jobs_[static_cast<std::size_t>(job)];
        return std::tuple{!one.first, one.last, one.ready_by};
    });
    std::vector<int> busy;
    for (const Calendar& calendar : calendars_) busy.push_back(calendar.arrives());
    for (const int job : jobs) {
        const auto least = std::ranges::min_element(busy) - busy.begin();
        const auto stylist = static_cast<std::size_t>(least);
        const ChairWork& work = jobs_[static_cast<std::size_t>(job)].work;
        orders_[stylist].push_back({job, SeatPart::set});
        if (work.in_two_parts()) orders_[stylist].push_back({job, SeatPart::finish});
        busy[stylist] += work.hands_on();
    }
}

// Those who must be first or last of one stylist stand there.
bool TriedChanges::may_be(const Order& order) const {
    for (std::size_t i = 0; i < order.size(); ++i) {
        const ChairJob& job = jobs_[static_cast<std::size_t>(order[i].job)];
        const bool ends = order[i].part == SeatPart::finish || !job.work.in_two_parts();
        if (job.first && order[i].part == SeatPart::set && i > 0) return false;
        if (job.last && ends && i + 1 < order.size()) return false;
    }
    return true;
}

int TriedChanges::badness_of(std::size_t stylist, const Order& order) const {
    if (order.empty()) return 0;
    if (!may_be(order)) return not_at_all;
    const auto parts = in_order(without_ends_, calendars_[stylist], order, from_);
    if (parts.empty()) return not_at_all;
    int badness = lateness_of(jobs_, parts);
    for (const PlacedPart& part : parts) {
        const ChairJob& job = jobs_[static_cast<std::size_t>(part.job)];
        const bool ends = part.part == SeatPart::finish || !job.work.in_two_parts();
        if (ends) badness += a_broken_end * std::max(0, part.ends - job.latest_end);
    }
    return badness;
}

void TriedChanges::put_in(Order& order, int job) {
    const auto at = [&](std::size_t place) {
        return order.begin() + static_cast<std::ptrdiff_t>(place);
    };
    const std::size_t set = draw(order.size() + 1);
    order.insert(at(set), {job, SeatPart::set});
    if (!jobs_[static_cast<std::size_t>(job)].work.in_two_parts()) return;
    const std::size_t most = std::min<std::size_t>(order.size() - set, 4);
    order.insert(at(set + 1 + draw(most)), {job, SeatPart::finish});
}

// A client goes elsewhere, with the same stylist or another.
void TriedChanges::change_one() {
    const std::size_t one = draw(orders_.size());
    const std::size_t other = draw(orders_.size());
    if (orders_[one].empty()) return;
    const int job = orders_[one][draw(orders_[one].size())].job;
    Order first = orders_[one];
    std::erase_if(first, [&](const OrderedPart& part) { return part.job == job; });
    if (one == other) {
        put_in(first, job);
        keep_if_no_later(one, std::move(first), one, {});
    } else {
        Order second = orders_[other];
        put_in(second, job);
        keep_if_no_later(one, std::move(first), other, std::move(second));
    }
}

// Two clients go where the other was.
void TriedChanges::change_two() {
    const std::size_t one = draw(orders_.size());
    const std::size_t other = draw(orders_.size());
    if (orders_[one].empty() || orders_[other].empty()) return;
    const int job = orders_[one][draw(orders_[one].size())].job;
    const int with = orders_[other][draw(orders_[other].size())].job;
    if (job == with) return;
    const auto swapped = [&](const Order& order) {
        Order result;
        for (const OrderedPart& part : order) {
            const int now = part.job == job ? with : part.job == with ? job : part.job;
            const bool in_two = jobs_[static_cast<std::size_t>(now)].work.in_two_parts();
            const bool was_in_two = jobs_[static_cast<std::size_t>(part.job)].work.in_two_parts();
            if (in_two || part.part == SeatPart::set) result.push_back({now, part.part});
            if (in_two && !was_in_two) result.push_back({now, SeatPart::finish});
        }
        return result;
    };
    if (one == other) {
        keep_if_no_later(one, swapped(orders_[one]), one, {});
    } else {
        keep_if_no_later(one, swapped(orders_[one]), other, swapped(orders_[other]));
    }
}

void TriedChanges::keep_if_no_later(std::size_t one, Order&& first, std::size_t other,
                                    Order&& second) {
    const int late = badness_of(one, first);
    const int also = one == other ? 0 : badness_of(other, second);
    const int before = badness_[one] + (one == other ? 0 : badness_[other]);
    if (late + also > before + allowed_) return;
    orders_[one] = std::move(first);
    badness_[one] = late;
    if (one == other) return;
    orders_[other] = std::move(second);
    badness_[other] = also;
}

TriedOrders TriedChanges::run(int tries, int enough) {
    const auto now = [&] { return std::accumulate(badness_.begin(), badness_.end(), 0); };
    int best = now();
    std::vector<Order> best_orders = orders_;
    for (int i = 0; i < tries && best > enough; ++i) {
        // What is worse is taken too at first, less and less.
        const double share = 1 - static_cast<double>(i) / tries;
        allowed_ =
            static_cast<int>(most_allowed * share * share * static_cast<double>(draw(1000)) / 1000);
        if (i % 2 == 0) {
            change_one();
        } else {
            change_two();
        }
        if (now() < best) {
            best = now();
            best_orders = orders_;
        }
    }
    orders_ = std::move(best_orders);
    return as_kept();
}

TriedOrders TriedChanges::as_kept() const {
    TriedOrders tried;
    int late = 0;
    for (std::size_t i = 0; i < orders_.size(); ++i) {
        auto parts = in_order(jobs_, calendars_[i], orders_[i], from_);
        if (parts.empty() != orders_[i].empty() || !may_be(orders_[i])) return {};
        late += lateness_of(jobs_, parts);
        JobSet set = 0;
        for (const OrderedPart& part : orders_[i]) set |= JobSet{1} << part.job;
        tried.sets.push_back(set);
        tried.parts.push_back(std::move(parts));
    }
    tried.late_in_all = late;
    return tried;
}

}  // namespace quarterturn
