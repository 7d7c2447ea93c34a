#pragma once
// All that is known of a look, gathered from the records and judged by the rules.

#include <optional>
#include <string>
#include <vector>

#include "indexer/rules/coverage.h"
#include "indexer/rules/recipe_check.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct LookState {
    Look look;
    Client client;
    std::optional<Wedding> wedding;
    std::vector<Photo> photos;  // those that count for the look
    std::vector<Waiver> waivers;
    CoverageReport coverage;
    std::optional<RecipeRevision> recipe;
    std::optional<RecipeDraft> draft;  // written since, which signing off would save and sign
    std::vector<RecipeFinding> recipe_findings;  // of the draft where there is one
    std::optional<SignOff> sign_off;             // when one stands
    std::vector<std::string> changes_since;      // since that sign-off
};

// Throws StoreError when there is no such look.
LookState look_state(Library& library, LookId look);

// What signing off would seal as things are: every photo that counts for the look, the recipe
// (nothing when there is none) and the waivers, by the checksums in the records.
Seal seal_of(const LookState& state);

}  // namespace quarterturn
