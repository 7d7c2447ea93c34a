#include "indexer/rules/running_order/crew.h"

#include <algorithm>

namespace quarterturn {
namespace {

constexpr long tries_of_a_pair = 60;

}  // namespace

Crew::Crew(std::vector<ChairJob> jobs, std::vector<Calendar> calendars, SearchSteps& steps)
    : jobs_(std::move(jobs)),
      calendars_(std::move(calendars)),
      steps_(steps),
      all_((JobSet{1} << jobs_.size()) - 1) {
    for (std::size_t i = 0; i < calendars_.size(); ++i) {
        stylists_.push_back(like_the_one_before(i)
                                ? stylists_.back()
                                : std::make_shared<BestOrders>(jobs_, calendars_[i], steps));
    }
}

bool Crew::like_the_one_before(std::size_t stylist) const {
    return stylist > 0 && calendars_[stylist] == calendars_[stylist - 1];
}

int Crew::earliest_arrival() const {
    int arrives = calendars_.front().arrives();
    for (const Calendar& calendar : calendars_) arrives = std::min(arrives, calendar.arrives());
    return arrives;
}

// A bound for each set; the others take what is left, from the earliest arrival on.
Crew::Table Crew::table_of(int stylist, int from, int below) {
    BestOrders& orders = *stylists_[static_cast<std::size_t>(stylist)];
    orders.look_at_all(all_, from, below, static_cast<int>(calendars_.size()) - 1,
                       std::max(from, earliest_arrival()));
    Table table(std::size_t{all_} + 1, below);
    for (JobSet set = 0; set <= all_; ++set) table[set] = std::min(below, orders.at_least(set));
    return table;
}

std::optional<Division> Crew::join(const std::vector<Table>& tables, int below) const {
    std::vector<Table> best{tables.front()};
    for (std::size_t k = 1; k < tables.size(); ++k) {
        const bool is_last = k + 1 == tables.size();
        Table next(std::size_t{all_} + 1, below);
        for (JobSet set = is_last ? all_ : 0; set <= all_; ++set) {
            for (JobSet own = set;; own = (own - 1) & set) {
                if (tables[k][own] < below) {
                    next[set] = std::min(next[set], best.back()[set & ~own] + tables[k][own]);
                }
                if (own == 0) break;
            }
        }
        best.push_back(std::move(next));
    }
    if (best.back()[all_] >= below) return std::nullopt;
    Division division{best.back()[all_], std::vector<JobSet>(tables.size())};
    JobSet rest = all_;
    for (std::size_t k = tables.size() - 1; k > 0; --k) {
        JobSet own = rest;
        while (best[k - 1][rest & ~own] + tables[k][own] != best[k][rest]) own = (own - 1) & rest;
        division.sets[k] = own;
        rest &= ~own;
    }
    division.sets[0] = rest;
    return division;
}

// What is found by trying is a limit for the exact search.
std::optional<Division> Crew::divide(int from, int below, int enough) {
    const int stylists = static_cast<int>(calendars_.size());
    if (pooled_lateness(jobs_, all_, from, stylists) >= below) return std::nullopt;
    const auto count = static_cast<long>(jobs_.size());
    const long tries = std::clamp(steps_.left, 0L, tries_of_a_pair * count * count);
    steps_.left -= tries;
    TriedOrders tried = TriedChanges(jobs_, calendars_, from).run(static_cast<int>(tries), enough);
    std::optional<Division> found;
    if (tried.late_in_all < below) {
        found = Division{tried.late_in_all, tried.sets};
        for (std::size_t i = 0; i < stylists_.size(); ++i) {
            stylists_[i]->remember(tried.sets[i], from, std::move(tried.parts[i]));
        }
        below = tried.late_in_all;
    }
    if (below <= enough) return found;
    try {
        auto better = exactly(from, below);
        return better ? better : found;
    } catch (const OutOfSearchSteps&) {
        if (!found) throw;
        cut_off_ = true;
        return found;
    }
}

std::optional<Division> Crew::exactly(int from, int below) {
    if (below <= 0) return std::nullopt;
    if (calendars_.size() == 1) {
        const int late = least_lateness(0, all_, from, below);
        return late < below ? std::optional{Division{late, {all_}}} : std::nullopt;
    }
    std::vector<Table> tables;
    for (std::size_t i = 0; i < calendars_.size(); ++i) {
        tables.push_back(like_the_one_before(i) ? tables.back()
                                                : table_of(static_cast<int>(i), from, below));
    }
    while (true) {
        auto division = join(tables, below);
        if (!division || settle(*division, tables, below)) return division;
    }
}

// Whether each set of the division is as little late as its bound says; else the bound is raised.
bool Crew::settle(const Division& division, std::vector<Table>& tables, int below) {
    bool all_settled = true;
    for (std::size_t i = 0; i < tables.size(); ++i) {
        int& bound = tables[i][division.sets[i]];
        const int late = std::min(below, stylists_[i]->settle(division.sets[i], below));
        all_settled = all_settled && late == bound;
        for (std::size_t k = i; k < tables.size(); ++k) {
            if (stylists_[k] == stylists_[i]) tables[k][division.sets[i]] = late;
        }
    }
    return all_settled;
}

int Crew::least_lateness(int stylist, JobSet set, int from, int below) {
    return stylists_[static_cast<std::size_t>(stylist)]->least_lateness(set, from, below);
}

std::vector<PlacedPart> Crew::order(int stylist, JobSet set, int from, int below) {
    return stylists_[static_cast<std::size_t>(stylist)]->order(set, from, below);
}

}  // namespace quarterturn
