#pragma once

#include <string>
#include <vector>

#include "indexer/disk/refused_file.h"

namespace quarterturn {

// A sentence for each file.
std::vector<std::string> reasons_of(const std::vector<RefusedFile>& refused);

// For whoever has many files to be told of: each reason once, with its files below it; of many, one
// is named.
std::vector<std::string> lines_by_reason(const std::vector<RefusedFile>& refused);
// A sentence for each reason, with its first file and the number of the others.
std::vector<std::string> sentences_by_reason(const std::vector<RefusedFile>& refused);

}  // namespace quarterturn
