// The index against a plain scan of the same pairs.

#include "indexer/rules/pair_index.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

#include "indexer/rules/pair_facts.h"

namespace quarterturn {
namespace {

using Values = std::vector<std::pair<Fact, std::string>>;

Values any_values() {
    const auto facts = *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 24));
    Values values;
    for (const int each : facts) {
        values.emplace_back(all_facts[static_cast<std::size_t>(each % 6)],
                            std::string(1, static_cast<char>('a' + each / 6)));
    }
    return values;
}

FactValues any_filter() {
    FactValues filter;
    for (const auto& [fact, value] : any_values()) {
        if (*rc::gen::inRange(0, 3) == 0) filter[fact].push_back(value);
    }
    return filter;
}

bool has(const Values& pair, Fact fact, const std::string& value) {
    return std::set(pair.begin(), pair.end()).contains({fact, value});
}

bool passes(const Values& pair, FactValues filter, std::optional<Fact> leaving_out = {}) {
    if (leaving_out) filter.erase(*leaving_out);
    for (const auto& [fact, wanted] : filter) {
        bool any = false;
        for (const std::string& value : wanted) any = any || has(pair, fact, value);
        if (!any) return false;
    }
    return true;
}

RC_GTEST_PROP(PairIndexProperty, FindsAndCountsWhatAPlainScanDoes, ()) {
    std::vector<Values> pairs;
    std::vector<bool> among;
    PairIndex index;
    for (int left = *rc::gen::inRange(0, 40); left > 0; --left) {
        pairs.push_back(any_values());
        among.push_back(*rc::gen::inRange(0, 4) > 0);
        index.add(pairs.back());
    }
    const FactValues filter = any_filter();
    std::vector<std::size_t> places;
    FactCounts counts;
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        if (among[i] && passes(pairs[i], filter)) places.push_back(i);
        for (const auto& [fact, value] : std::set(pairs[i].begin(), pairs[i].end())) {
            counts[fact][value] += among[i] && passes(pairs[i], filter, fact) ? 1 : 0;
        }
    }
    const FoundPairs found = index.find(filter, among);
    RC_ASSERT(found.places == places);
    RC_ASSERT(found.counts == counts);
}

TEST(PairIndex, TakesNoNoticeOfCaseAndHyphensInAFilter) {
    PairIndex index;
    index.add({{Fact::family, "Shell roll"}});
    index.add({{Fact::family, "low bun"}});
    EXPECT_EQ(index.find({{Fact::family, {"shell-Roll"}}}).places, std::vector<std::size_t>{0});
    EXPECT_TRUE(index.find({{Fact::family, {"shell"}}}).places.empty());
    EXPECT_TRUE(index.find({{Fact::year, {"2026"}}}).places.empty()) << "no pair has a year";
    EXPECT_EQ(index.find({{Fact::year, {}}}).places.size(), 2U) << "nothing is asked of the year";
}

TEST(PairFacts, SeasonsBeginWithMonths) {
    const auto season = [](const char* day) { return season_of(parse_date(day).value()); };
    EXPECT_EQ(season("2026-02-28"), "winter");
    EXPECT_EQ(season("2026-03-01"), "spring");
    EXPECT_EQ(season("2026-05-31"), "spring");
    EXPECT_EQ(season("2026-06-01"), "summer");
    EXPECT_EQ(season("2026-11-30"), "autumn");
    EXPECT_EQ(season("2026-12-01"), "winter");
    EXPECT_EQ(season("2027-01-01"), "winter");
}

TEST(PairFacts, AreReadInTheOrderSheExpects) {
    using Order = std::vector<std::pair<std::string, int>>;
    EXPECT_EQ(in_reading_order(Fact::season, {{"autumn", 9}, {"spring", 1}, {"winter", 4}}),
              (Order{{"spring", 1}, {"autumn", 9}, {"winter", 4}}));
    EXPECT_EQ(in_reading_order(Fact::year, {{"2024", 9}, {"2026", 1}}),
              (Order{{"2026", 1}, {"2024", 9}}));
    EXPECT_EQ(in_reading_order(Fact::angle, {{"back", 1}, {"crown", 2}, {"left", 1}}),
              (Order{{"left", 1}, {"back", 1}, {"crown", 2}}));
    EXPECT_EQ(in_reading_order(Fact::colour, {{"black", 1}, {"brown", 3}, {"red", 1}}),
              (Order{{"brown", 3}, {"black", 1}, {"red", 1}}));
}

}  // namespace
}  // namespace quarterturn
