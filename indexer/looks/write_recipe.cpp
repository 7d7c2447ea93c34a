#include "indexer/looks/write_recipe.h"

#include <algorithm>
#include <utility>

#include "indexer/rules/recipe/possible_numbers.h"
#include "indexer/rules/recipe_difference.h"
#include "indexer/rules/recipe_start.h"

namespace quarterturn {

std::optional<SittingId> sitting_at(Library& library, const Look& look, LocalTime moment) {
    std::optional<SittingId> of_the_day;
    for (const Sitting& sitting : library.sittings().of_client(look.client)) {
        if (std::ranges::find(look.sittings, sitting.id) == look.sittings.end()) continue;
        if (sitting.starts <= moment && moment <= sitting.ends) return sitting.id;
        if (!of_the_day && date_of(sitting.starts) == date_of(moment)) of_the_day = sitting.id;
    }
    return of_the_day;
}

void refuse_impossible_numbers(const Recipe& recipe) {
    const std::string against = impossible_number(recipe);
    if (!against.empty()) throw StoreError(against);
}

RevisionId save_recipe(Library& library, const Look& look, const Recipe& recipe, LocalTime now) {
    refuse_impossible_numbers(recipe);
    return library.recipes().save(look.id, recipe, now, sitting_at(library, look, now));
}

Recipe begun_recipe(Library& library, LookId look) {
    if (const auto draft = library.recipes().draft(look)) return draft->recipe;
    const auto current = library.recipes().current(look);
    return current ? current->recipe : Recipe{};
}

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

std::optional<Recipe> start_from_look(Library& library, const Look& look, const Look& other) {
    const auto revision = library.recipes().current(other.id);
    if (!revision) return std::nullopt;
    return started_from(revision->recipe, look.client == other.client ? StartFor::same_client
                                                                      : StartFor::another_client);
}

}  // namespace quarterturn
