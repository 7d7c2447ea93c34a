#pragma once

#include <set>
#include <string>
#include <vector>

#include "indexer/erasure/files_without_record.h"
#include "indexer/erasure/placed_by_hand.h"
#include "indexer/store/erasure_sought.h"
#include "indexer/store/library.h"
#include "indexer/store/sought_names.h"

namespace quarterturn {

// Looks at the names of all files of the library, and reads those that no record names: a sentence
// for each that says one of the names or one of the checksums, or has it, and for each that could
// not be read or is no text. Passed over are `going`, which go with what is erased, and what
// of others was placed there by hand.
std::vector<SaidOfFile> files_saying(Library& library, const SoughtNames& names,
                                     const std::vector<std::string>& checksums,
                                     const std::set<std::string>& going,
                                     const PlacedByHand& by_hand);

}  // namespace quarterturn
