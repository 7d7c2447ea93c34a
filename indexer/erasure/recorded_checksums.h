#pragma once
// Photos, papers and pictures that records name, by the SHA-256 of what they hold.

#include <map>
#include <set>
#include <string>

#include "indexer/erasure/erase.h"

namespace quarterturn {

using RecordedByChecksum = std::multimap<std::string, Path>;  // relative to the library's folder

// Throws StoreError.
RecordedByChecksum recorded_by_checksum(Library& library);

// Of what goes and nobody else has: one form, or one picture that was wished for, may be kept for
// several clients. Throws StoreError.
std::set<std::string> checksums_of_what_goes(Library& library, const ErasurePlan& plan);

}  // namespace quarterturn
