#pragma once
// What looks are found by, where one look tells of the hair and another of the same sitting does
// not.

#include <map>

#include "indexer/store/library.h"

namespace quarterturn {

// Of all looks. Length, texture, density and colour of the hair that a look says nothing of are
// those of the other looks of the same client in a sitting of both. With two statements. Throws
// StoreError.
std::map<LookId, LookFacts> facts_of_looks(Library& library);
// Of these, and nothing of others: all looks of some clients.
std::map<LookId, LookFacts> facts_of_these_looks(Library& library, const std::vector<Look>& looks);
// The same as of all for a caller who has read all looks.
std::map<LookId, LookFacts> facts_of_looks(Library& library, const std::vector<Look>& all_looks);

}  // namespace quarterturn
