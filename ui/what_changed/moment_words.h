#pragma once
// What a moment of a recipe is called.

#include <QString>

#include "indexer/looks/recipe_moments.h"

namespace quarterturn {

QString when_words(const RecipeMoment& moment);    // "trial on 7 Nov 2026"
QString which_words(const RecipeMoment& moment);   // "Low twisted bun, recipe 2"
QString moment_words(const RecipeMoment& moment);  // "trial on 7 Nov 2026, recipe 2: Low bun"

}  // namespace quarterturn
