#pragma once
// Which measures make a photo a flawed one.

#include <vector>

#include "indexer/record/photo.h"

namespace quarterturn {

// Sizes in pixels, as seen upright.
std::vector<Flaw> judge_flaws(const Measures& measures, int width, int height);

}  // namespace quarterturn
