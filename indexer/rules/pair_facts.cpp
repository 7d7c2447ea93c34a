#include "indexer/rules/pair_facts.h"

#include <algorithm>
#include <array>

#include "indexer/record/consent.h"

namespace quarterturn {
namespace {

constexpr std::array<std::string_view, 4> seasons{"spring", "summer", "autumn", "winter"};

template <class Words>
int place_among(const Words& words, const std::string& value) {
    return static_cast<int>(std::ranges::find(words, value) - words.begin());
}

template <class Values>
std::vector<std::string> words_of_all(const Values& values) {
    std::vector<std::string> words;
    for (const auto value : values) words.emplace_back(word(value));
    return words;
}

// Smaller ones are read first.
int rank_of(Fact fact, const std::string& value, int count) {
    switch (fact) {
        case Fact::season:
            return place_among(seasons, value);
        case Fact::angle:
            return place_among(words_of_all(all_angles), value);
        case Fact::kind:
            return place_among(words_of_all(all_pair_kinds), value);
        case Fact::use:
            return place_among(words_of_all(all_uses), value);
        case Fact::worn:
            return place_among(words_of_all(std::array{Worn::ceremony, Worn::evening, Worn::other}),
                               value);
        case Fact::year:
            return -std::stoi(value);
        default:
            return -count;
    }
}

}  // namespace

std::string season_of(Date date) {
    const unsigned since_march = (static_cast<unsigned>(date.month()) + 9) % 12;
    return std::string(seasons[since_march / 3]);
}

std::vector<std::pair<Fact, std::string>> facts_of_pair(const MadePair& pair, Worn worn,
                                                        const LookFacts& look) {
    std::vector<std::pair<Fact, std::string>> facts;
    for (const LookFact& fact : look) facts.emplace_back(fact.fact, fact.value);
    facts.emplace_back(Fact::worn, word(worn));
    facts.emplace_back(Fact::angle, word(pair.place.angle));
    facts.emplace_back(Fact::kind, word(pair.place.kind));
    if (pair.worn_on) {
        facts.emplace_back(Fact::season, season_of(*pair.worn_on));
        facts.emplace_back(Fact::year, std::to_string(static_cast<int>(pair.worn_on->year())));
    }
    return facts;
}

std::vector<std::pair<std::string, int>> in_reading_order(
    Fact fact, const std::map<std::string, int>& counts) {
    std::vector<std::pair<std::string, int>> values(counts.begin(), counts.end());
    std::ranges::stable_sort(
        values, {}, [&](const auto& each) { return rank_of(fact, each.first, each.second); });
    return values;
}

}  // namespace quarterturn
