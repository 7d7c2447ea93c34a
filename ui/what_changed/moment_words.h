#pragma once
// What a moment of a recipe is called.

#include <QString>

#include "indexer/looks/recipe_moments.h"

namespace quarterturn {

QString moment_words(const RecipeMoment& moment);  // "Low bun, recipe 2: trial on 7 Nov 2026"
QString when_words(const RecipeMoment& moment);    // "trial on 7 Nov 2026"

}  // namespace quarterturn
