#include "indexer/rules/pair_index.h"

#include <algorithm>

#include "indexer/record/word_list.h"

namespace quarterturn {

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
    // How many facts a pair fails by, and the one it fails by where it is one.
    std::vector<std::uint8_t> failed(size_, 0);
    std::vector<Fact> failed_by(size_, Fact{});
    for (const auto& [fact, wanted] : filter) {
        if (wanted.empty()) continue;
        const auto known = facts_.find(fact);
        const auto passed = pass(known == facts_.end() ? nullptr : &known->second, wanted);
        for (std::size_t place = 0; place < size_; ++place) {
            if (passed[place]) continue;
            ++failed[place];
            failed_by[place] = fact;
        }
    }
    const auto looked_at = [&](std::size_t place) { return among.empty() || among[place]; };
    FoundPairs found;
    for (std::size_t place = 0; place < size_; ++place) {
        if (failed[place] == 0 && looked_at(place)) found.places.push_back(place);
    }
    for (const auto& [fact, numbered] : facts_) {
        const auto counts = [&, of = fact](std::uint32_t place) {
            const bool only_by_this = failed[place] == 1 && failed_by[place] == of;
            return looked_at(place) && (failed[place] == 0 || only_by_this);
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
