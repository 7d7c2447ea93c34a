#pragma once

#include <string>
#include <vector>

#include "indexer/store/library.h"
#include "indexer/store/sought_names.h"

namespace quarterturn {

// Looks at the names of all files of the library and reads the loose files in it, not the photos
// and not the records, but copies of those: a sentence for each that says one of the names or one
// of the checksums, or has it, and for each that could not be read.
std::vector<std::string> files_saying(Library& library, const SoughtNames& names,
                                      const std::vector<std::string>& checksums);

}  // namespace quarterturn
