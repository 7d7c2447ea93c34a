#pragma once

#include "indexer/record/recipe.h"

namespace quarterturn {

// Where a recipe comes from that is to be the start of another.
enum class StartFor { same_client, another_client };

// What of a recipe holds for another look: how it is made, and for the same client her hair and her
// cautions. What was said, judged and photographed stays behind, and so does a second look.
Recipe started_from(const Recipe& other, StartFor whom);

}  // namespace quarterturn
