#pragma once
// The parts of a recipe as they stand on the screen, and what belongs to which.

#include <QString>
#include <array>
#include <optional>
#include <string_view>

#include "indexer/record/recipe.h"

namespace quarterturn {

enum class RecipePlace {
    cautions,
    hair,
    prep,
    parting,
    build,
    pieces,
    finish,
    second_look,
    feedback,
    minutes
};

inline constexpr std::array all_recipe_places{
    RecipePlace::cautions, RecipePlace::hair,   RecipePlace::prep,   RecipePlace::parting,
    RecipePlace::build,    RecipePlace::pieces, RecipePlace::finish, RecipePlace::second_look,
    RecipePlace::feedback, RecipePlace::minutes};

QString shown(RecipePlace place);  // "Hair on the day"

// Where what a rule of the recipe check asks for is written; nothing for a name that is no rule's.
std::optional<RecipePlace> place_of_rule(std::string_view rule);

// What the recipe says there, a line each.
QStringList lines_at(RecipePlace place, const Recipe& recipe);

}  // namespace quarterturn
