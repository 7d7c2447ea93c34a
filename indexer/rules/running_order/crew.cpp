#include "indexer/rules/running_order/crew.h"

#include <algorithm>
#include <bit>
#include <cstdlib>

namespace quarterturn {
namespace {

constexpr int even_tries = 400;

}  // namespace

Crew::Crew(std::vector<ChairJob> jobs, std::vector<Calendar> calendars, SearchSteps& steps)
    : jobs_(std::move(jobs)),
      calendars_(std::move(calendars)),
      all_((JobSet{1} << jobs_.size()) - 1) {
    for (std::size_t i = 0; i < calendars_.size(); ++i) {
        stylists_.push_back(like_the_one_before(i)
                                ? stylists_.back()
                                : std::make_shared<OneStylist>(jobs_, calendars_[i], steps));
    }
}

bool Crew::like_the_one_before(std::size_t stylist) const {
    return stylist > 0 && calendars_[stylist] == calendars_[stylist - 1];
}

// Whatever the others take, they take it from the earliest arrival on.
int Crew::pooled_rest(JobSet rest, int from) const {
    const auto others = static_cast<int>(calendars_.size()) - 1;
    if (rest == 0) return 0;
    if (others == 0) return not_at_all;
    int arrives = calendars_.front().arrives();
    for (const Calendar& calendar : calendars_) arrives = std::min(arrives, calendar.arrives());
    return pooled_lateness(jobs_, rest, std::max(from, arrives), others);
}

// A set is at least as late as any part of it, and needs no search when that is too late already.
Crew::Table Crew::table_of(int stylist, int from, int below) {
    Table table(std::size_t{all_} + 1, below);
    Table at_least(std::size_t{all_} + 1, 0);
    table[0] = 0;
    for (JobSet set = 1; set <= all_; ++set) {
        for (JobSet left = set; left != 0; left &= left - 1) {
            const JobSet lowest = left & (~left + 1);
            at_least[set] = std::max(at_least[set], at_least[set & ~lowest]);
        }
        const int room = below - pooled_rest(all_ & ~set, from);
        if (at_least[set] >= room) continue;
        at_least[set] = least_lateness(stylist, set, from, room);
        if (at_least[set] < room) table[set] = at_least[set];
    }
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

// The sets of `rest` whose work is nearest to an equal share first.
std::vector<JobSet> Crew::by_evenness(JobSet rest, int shares) const {
    if (shares == 1) return {rest};
    const auto work_of = [&](JobSet set) {
        int work = 0;
        for (; set != 0; set &= set - 1) {
            work += jobs_[static_cast<std::size_t>(std::countr_zero(set))].work.hands_on();
        }
        return work;
    };
    const int all = work_of(rest);
    std::vector<std::pair<int, JobSet>> sets;
    for (JobSet set = rest;; set = (set - 1) & rest) {
        sets.emplace_back(std::abs(shares * work_of(set) - all), set);
        if (set == 0) break;
    }
    std::ranges::sort(sets);
    std::vector<JobSet> result;
    for (const auto& [distance, set] : sets) result.push_back(set);
    return result;
}

bool Crew::divide_evenly(std::vector<JobSet>& sets, JobSet rest, int from, int below, int& tries) {
    const auto stylist = static_cast<int>(sets.size());
    const int shares = static_cast<int>(calendars_.size()) - stylist;
    if (shares == 0) return true;
    for (const JobSet set : by_evenness(rest, shares)) {
        if (--tries < 0) return false;
        const int late = least_lateness(stylist, set, from, below);
        if (late >= below) continue;
        sets.push_back(set);
        if (divide_evenly(sets, rest & ~set, from, below - late, tries)) return true;
        sets.pop_back();
    }
    return false;
}

// Tried first, since where a division is good enough an even one mostly is.
std::optional<Division> Crew::even_division(int from, int below) {
    if (below <= 0) return std::nullopt;
    int tries = even_tries;
    std::vector<JobSet> sets;
    if (!divide_evenly(sets, all_, from, below, tries)) return std::nullopt;
    Division division{0, sets};
    for (std::size_t i = 0; i < sets.size(); ++i) {
        division.late_in_all += least_lateness(static_cast<int>(i), sets[i], from, below);
    }
    return division;
}

std::optional<Division> Crew::divide(int from, int below, int enough) {
    const int stylists = static_cast<int>(calendars_.size());
    if (pooled_lateness(jobs_, all_, from, stylists) >= below) return std::nullopt;
    if (calendars_.size() == 1) {
        const int late = least_lateness(0, all_, from, below);
        return late < below ? std::optional{Division{late, {all_}}} : std::nullopt;
    }
    if (auto even = even_division(from, std::min(below, enough + 1))) return even;
    std::vector<Table> tables;
    for (std::size_t i = 0; i < calendars_.size(); ++i) {
        tables.push_back(like_the_one_before(i) ? tables.back()
                                                : table_of(static_cast<int>(i), from, below));
    }
    return join(tables, below);
}

int Crew::least_lateness(int stylist, JobSet set, int from, int below) {
    return stylists_[static_cast<std::size_t>(stylist)]->least_lateness(set, from, below);
}

std::vector<PlacedPart> Crew::order(int stylist, JobSet set, int from, int below) {
    return stylists_[static_cast<std::size_t>(stylist)]->order(set, from, below);
}

}  // namespace quarterturn
