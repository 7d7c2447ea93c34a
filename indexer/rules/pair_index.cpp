#include "indexer/rules/pair_index.h"

#include <algorithm>

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

// The fact by which a pair fails the filter; by more where it is not looked at, too.
using Failing = std::uint8_t;
constexpr Failing by_none = 0;
constexpr Failing by_more = 255;

constexpr Failing failing_by(Fact fact) {
    return static_cast<Failing>(static_cast<int>(fact) + 1);
}

}  // namespace

void PairIndex::add(const std::vector<std::pair<Fact, std::string>>& values) {
    put(size_++, values);
}

void PairIndex::put(std::size_t at, const std::vector<std::pair<Fact, std::string>>& values) {
    const auto place = static_cast<std::uint32_t>(at);
    for (const auto& [fact, value] : values) {
        Numbered& own = facts_[fact];
        const auto [number, is_new] =
            own.numbers.try_emplace(value, static_cast<std::uint32_t>(own.places.size()));
        if (is_new) own.places.emplace_back();
        Places& places = own.places[number->second];
        const auto from = std::ranges::lower_bound(places, place);
        if (from == places.end() || *from != place) places.insert(from, place);
    }
}

void PairIndex::take_out(std::size_t at) {
    const auto place = static_cast<std::uint32_t>(at);
    for (auto& [fact, own] : facts_) {
        for (Places& places : own.places) {
            const auto from = std::ranges::lower_bound(places, place);
            if (from != places.end() && *from == place) places.erase(from);
        }
    }
}

std::vector<bool> PairIndex::pass(const Numbered* fact,
                                  const std::vector<std::string>& wanted) const {
    std::vector<bool> passed(size_);
    if (fact == nullptr) return passed;
    for (const auto& [value, number] : fact->numbers) {
        const auto is_it = [&](const std::string& other) {
            return plain_word(other) == plain_word(value);
        };
        if (std::ranges::none_of(wanted, is_it)) continue;
        for (const std::uint32_t place : fact->places[number]) passed[place] = true;
    }
    return passed;
}

FoundPairs PairIndex::find(const FactValues& filter, const std::vector<bool>& among) const {
    std::vector<Failing> failing(size_, by_none);
    for (std::size_t place = 0; place < among.size(); ++place) {
        if (!among[place]) failing[place] = by_more;
    }
    for (const auto& [fact, wanted] : filter) {
        if (wanted.empty()) continue;
        const auto known = facts_.find(fact);
        const auto passed = pass(known == facts_.end() ? nullptr : &known->second, wanted);
        for (std::size_t place = 0; place < size_; ++place) {
            if (passed[place]) continue;
            failing[place] = failing[place] == by_none ? failing_by(fact) : by_more;
        }
    }
    FoundPairs found;
    for (std::size_t place = 0; place < size_; ++place) {
        if (failing[place] == by_none) found.places.push_back(place);
    }
    for (const auto& [fact, numbered] : facts_) {
        const auto counts = [&, by_this = failing_by(fact)](std::uint32_t place) {
            return failing[place] == by_none || failing[place] == by_this;
        };
        for (const auto& [value, number] : numbered.numbers) {
            if (numbered.places[number].empty()) continue;  // those that had it were taken out
            found.counts[fact][value] =
                static_cast<int>(std::ranges::count_if(numbered.places[number], counts));
        }
    }
    return found;
}

}  // namespace quarterturn
