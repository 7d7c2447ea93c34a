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

std::vector<LatenessTable> Crew::rough_tables(int from, int below) const {
    std::vector<LatenessTable> tables;
    for (std::size_t i = 0; i < calendars_.size(); ++i) {
        tables.push_back(like_the_one_before(i)
                             ? tables.back()
                             : lateness_by_work(jobs_, calendars_[i], from, below));
    }
    return tables;
}

OtherStylists Crew::others_than(std::size_t stylist, const std::vector<LatenessTable>& rough,
                                const std::vector<LatenessTable>& tables, int from,
                                int below) const {
    OtherStylists others;
    others.from = no_limit;
    for (std::size_t i = 0; i < calendars_.size(); ++i) {
        if (i == stylist) continue;
        const bool is_first = others.count++ == 0;
        others.from = std::min(others.from, std::max(from, calendars_[i].arrives()));
        others.rough = is_first ? rough[i] : joined(others.rough, rough[i], below);
        others.late = is_first ? tables[i] : joined(others.late, tables[i], below);
    }
    return others;
}

// A bound for each set; each look makes those of the stylists after her shorter.
void Crew::look_at_all(const std::vector<LatenessTable>& rough, std::vector<LatenessTable>& tables,
                       int from, int below) {
    for (std::size_t i = 0; i < tables.size(); ++i) {
        if (like_the_one_before(i)) {
            tables[i] = tables[i - 1];
            continue;
        }
        stylists_[i]->look_at_all(all_, from, below, others_than(i, rough, tables, from, below));
        for (JobSet set = 0; set <= all_; ++set) {
            tables[i][set] = std::min(below, stylists_[i]->at_least(set));
        }
    }
}

std::optional<Division> Crew::join(const std::vector<LatenessTable>& tables, int below) const {
    std::vector<LatenessTable> best{tables.front()};
    for (std::size_t k = 1; k < tables.size(); ++k) {
        best.push_back(joined(best.back(), tables[k], below));
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
    const std::vector<LatenessTable> rough = rough_tables(from, below);
    if (!join(rough, below)) return std::nullopt;
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
        auto better = exactly(rough, from, below);
        return better ? better : found;
    } catch (const OutOfSearchSteps&) {
        if (!found) throw;
        cut_off_ = true;
        return found;
    }
}

std::optional<Division> Crew::exactly(const std::vector<LatenessTable>& rough, int from,
                                      int below) {
    if (below <= 0) return std::nullopt;
    if (calendars_.size() == 1) {
        const int late = least_lateness(0, all_, from, below);
        return late < below ? std::optional{Division{late, {all_}}} : std::nullopt;
    }
    std::vector<LatenessTable> tables = rough;
    look_at_all(rough, tables, from, below);
    while (true) {
        auto division = join(tables, below);
        if (!division || settle(*division, tables, below)) return division;
    }
}

// Whether each set of the division is as little late as its bound says; else the bound is raised.
bool Crew::settle(const Division& division, std::vector<LatenessTable>& tables, int below) {
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
