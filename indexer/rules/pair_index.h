#pragma once
// Which pairs answer a filter, and how many would answer it with another value.

#include <cstdint>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "indexer/record/pair.h"

namespace quarterturn {

// For each fact and value the number of pairs that have it and pass the filters of all other facts;
// values that pass none are there with 0, so that a list of them does not jump.
using FactCounts = std::map<Fact, std::map<std::string, int>>;

struct FoundPairs {
    std::vector<std::size_t> places;  // as they were added, from 0
    FactCounts counts;
};

// All in memory: a look at tens of thousands of pairs takes no statement and a few milliseconds.
class PairIndex {
  public:
    // A pair with these values; a fact may be missing, or be there with several.
    void add(const std::vector<std::pair<Fact, std::string>>& values);
    std::size_t size() const { return size_; }
    // The same for a place that was taken out.
    void put(std::size_t place, const std::vector<std::pair<Fact, std::string>>& values);
    // It counts nowhere any more, and nothing finds it but a filter without values.
    void take_out(std::size_t place);

    // Case (A to Z), '-' and '_' do not matter in the values of the filter.
    // Of the pairs that `among` says are to be looked at; empty: of all.
    FoundPairs find(const FactValues& filter, const std::vector<bool>& among = {}) const;

  private:
    using Places = std::vector<std::uint32_t>;
    struct Numbered {
        std::map<std::string, std::uint32_t> numbers;
        std::vector<Places> places;  // by number
    };

    // The pairs with one of these values.
    std::vector<bool> pass(const Numbered* fact, const std::vector<std::string>& wanted) const;

    std::map<Fact, Numbered> facts_;
    std::size_t size_ = 0;
};

}  // namespace quarterturn
