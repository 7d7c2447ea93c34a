#pragma once
// What a pair is found by: the facts of its look and what follows from its records.

#include <string>
#include <utility>
#include <vector>

#include "indexer/record/pair.h"
#include "indexer/record/people.h"

namespace quarterturn {

// Spring begins on 1 March, summer on 1 June, autumn on 1 September and winter on 1 December, as
// meteorologists count them north of the equator.
std::string season_of(Date date);

std::vector<std::pair<Fact, std::string>> facts_of_pair(const MadePair& pair, Worn worn,
                                                        const LookFacts& look);

// As a list of values is read: seasons and angles in their usual order, years the newest first,
// other values as they are counted: the most frequent first.
std::vector<std::pair<std::string, int>> in_reading_order(Fact fact,
                                                          const std::map<std::string, int>& counts);

}  // namespace quarterturn
