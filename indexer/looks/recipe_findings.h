#pragma once
// What the recipe check finds of a look, by her own rules.

#include <optional>
#include <vector>

#include "indexer/rules/recipe_check.h"
#include "indexer/store/library.h"
#include "indexer/store/recipe_rules_file.h"

namespace quarterturn {

// Judges the recipes of one library. Reads her rules once. All functions throw StoreError and
// DiskError.
class RecipeJudge {
  public:
    explicit RecipeJudge(Library& library);

    // Lines of her rules that are not understood come last, as warnings.
    std::vector<RecipeFinding> findings(const Look& look, const std::optional<Recipe>& recipe);

  private:
    std::optional<Recipe> first_look(const Look& look, const Recipe& recipe);

    Library* library_;
    ReadRules rules_;
};

// The look of the same client that this recipe's second look comes from, if it is another one.
std::optional<Look> first_look_of(Library& library, const Look& look, const Recipe& recipe);

}  // namespace quarterturn
