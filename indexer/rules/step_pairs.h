#pragma once

#include <utility>
#include <vector>

#include "indexer/record/recipe/build.h"

namespace quarterturn {

// Which old step lives on in which new one, both in rising order: as many equal steps as can be,
// then as many as can be that have at least two words of five in common.
std::vector<std::pair<std::size_t, std::size_t>> step_pairs(const std::vector<Step>& was,
                                                            const std::vector<Step>& is);

}  // namespace quarterturn
