#pragma once
// What somebody who helps her with the program wants to know of this computer and of the library:
// versions, sizes and counts. No name, no word, no path and no photo of hers or of a client is in
// it.

#include <span>
#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

struct HelpFact {
    std::string what;
    std::string value;
};

// Reads the whole file of the records to see whether it is sound. Throws StoreError and DiskError.
std::vector<HelpFact> help_facts(Library& library, LocalTime now);

// One line each, in columns, below a sentence that says what this is.
std::string help_text(std::span<const HelpFact> facts);

}  // namespace quarterturn
