#pragma once
// A filter of pairs on the command line.

#include <map>
#include <string>
#include <vector>

#include "app/qturn/command.h"
#include "indexer/rules/pair_index.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct PairFilterOptions {
    Texts words;
    std::map<Fact, Texts> values;
    Text kept;
    bool refused = false;
};

// "--length VALUE" and so on, for each of these facts.
void add_fact_options(Command& command, std::map<Fact, Texts>& values,
                      const std::vector<Fact>& facts);
void add_filter_options(Command& command, PairFilterOptions& options);

// Values of a texture, density, parting or family that no look has, as wrong use with those known;
// other facts are in her own words.
void refuse_unknown_values(Library& library, const std::map<Fact, Texts>& values);

// The kept filter that is named, and everything else besides. Throws WrongUse.
PairFilter filter_from(Library& library, const PairFilterOptions& options);

}  // namespace quarterturn
