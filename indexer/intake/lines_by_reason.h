#pragma once

#include <string>
#include <vector>

#include "indexer/intake/import.h"

namespace quarterturn {

// For whoever has many files to be told of: each reason once, with its files below it; of many, one
// is named.
std::vector<std::string> lines_by_reason(const std::vector<RefusedFile>& refused);

}  // namespace quarterturn
