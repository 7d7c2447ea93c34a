#include "indexer/rules/put_back.h"

#include <algorithm>
#include <utility>

#include "indexer/rules/recipe_difference.h"

namespace quarterturn {

Recipe put_back(const Recipe& now, const Recipe& with, const Recipe& without) {
    RecipeDifference back = recipe_difference(without, with);
    if (now.build.size() == without.build.size()) return with_difference(now, back);
    const std::vector<StepChange> steps = std::exchange(back.steps, {});
    Recipe recipe = with_difference(now, back);
    for (const StepChange& change : steps) {
        if (change.edit == StepEdit::removed) {
            const auto gone = std::ranges::find(recipe.build, without.build[*change.was]);
            if (gone != recipe.build.end()) recipe.build.erase(gone);
        }
        if (change.edit != StepEdit::added) continue;
        const std::size_t place = std::min(*change.is, recipe.build.size());
        recipe.build.insert(recipe.build.begin() + static_cast<std::ptrdiff_t>(place), change.step);
    }
    return recipe;
}

}  // namespace quarterturn
