#include "indexer/looks/write_recipe.h"

#include <algorithm>

#include "indexer/rules/recipe/possible_numbers.h"
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

std::optional<Recipe> start_from_look(Library& library, const Look& look, const Look& other) {
    const auto revision = library.recipes().current(other.id);
    if (!revision) return std::nullopt;
    return started_from(revision->recipe, look.client == other.client ? StartFor::same_client
                                                                      : StartFor::another_client);
}

}  // namespace quarterturn
