#pragma once
// Whether a look may be signed off, and what has changed since it was.

#include <span>
#include <string>
#include <vector>

#include "indexer/record/sign_off.h"
#include "indexer/rules/coverage.h"
#include "indexer/rules/recipe_check.h"

namespace quarterturn {

// The sentences that stand against signing off, first the shots in the order of the shot list, then
// the recipe; empty when nothing does.
std::vector<std::string> reasons_against_sign_off(const CoverageReport& coverage,
                                                  std::span<const RecipeFinding> recipe);

// What a photo stood for, as it is sealed: "after, left, mirrored", and the reason she gave when
// she accepted it in spite of a flaw.
std::string sealed_tags(const Tags& tags);

// One sentence for each difference between what was sealed and what is there now; empty when and
// only when nothing changed. The order of photos and waivers means nothing.
std::vector<std::string> changes_since(const Seal& sealed, const Seal& now);

}  // namespace quarterturn
