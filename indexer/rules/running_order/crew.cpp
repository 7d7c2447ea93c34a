#include "indexer/rules/running_order/crew.h"

#include <algorithm>
#include <bit>

namespace quarterturn {

Crew::Crew(std::vector<Job> jobs, std::vector<Calendar> calendars, Steps& steps)
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

std::optional<Division> Crew::divide(int from, int below) {
    const int stylists = static_cast<int>(calendars_.size());
    if (pooled_lateness(jobs_, all_, from, stylists) >= below) return std::nullopt;
    if (calendars_.size() == 1) {
        const int late = least_lateness(0, all_, from, below);
        return late < below ? std::optional{Division{late, {all_}}} : std::nullopt;
    }
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
