#include "indexer/rules/recipe_start.h"

namespace quarterturn {

Recipe started_from(const Recipe& other, StartFor whom) {
    Recipe recipe = other;
    recipe.second_look.reset();
    recipe.feedback.clear();
    recipe.feedback_details = {};
    recipe.hair_on_the_day.changed.clear();
    for (Step& step : recipe.build) step.photos.clear();
    for (Piece& piece : recipe.pieces) piece.photo.clear();
    if (whom == StartFor::same_client) return recipe;
    recipe.hair.clear();
    recipe.hair_on_the_day = {};
    recipe.cautions.clear();
    recipe.caution_details = {};
    return recipe;
}

}  // namespace quarterturn
