#pragma once
// Whether a look may be signed off, and what has changed since it was.

#include <span>
#include <string>
#include <vector>

#include "indexer/record/sign_off.h"
#include "indexer/rules/coverage.h"
#include "indexer/rules/recipe_check.h"

namespace quarterturn {

// The sentences that stand against signing off; empty when nothing does.
std::vector<std::string> reasons_against_sign_off(const CoverageReport& coverage,
                                                  std::span<const RecipeFinding> recipe);

// One sentence for each difference between what was sealed and what is there now; empty when
// nothing changed.
std::vector<std::string> changes_since(const Seal& sealed, const Seal& now);

}  // namespace quarterturn
