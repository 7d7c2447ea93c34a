#pragma once
// Which measures make a photo a flawed one.
//
// How the thresholds were chosen: on the 67 demo photos, whose flaws are known from the program
// that renders them, and checked on flaws of other strengths made from the good ones
// (tests/accuracy/demo_flaws_test.cpp) and on photos of twenty real cameras.
//
//                     flawed photos    good photos      threshold   real cameras
//   focus             1.45 … 1.77      2.72 … 10.8      2.1         2.58 and above
//   motion, if soft   moved 0.13 …     out of focus     0.09
//                     0.26             0.03 … 0.06
//   mean light        0.20 … 0.24      0.31 … 0.75      0.25        0.26 and above
//   highlights        0.76 … 0.82      0 … 0.01         0.3         0.05 and below, but for a
//   drawing
//
// The softest good photo (2.72) is one of a burst, kept so that the sharpest can be chosen. The
// share of clipped highlights leaves room for a white wall behind the head.

#include <vector>

#include "indexer/record/photo.h"

namespace quarterturn {

// Sizes in pixels, as seen upright. A long edge below 1000 pixels is too small: at 300 dots per
// inch it prints less than 85 mm long (common practice). The flaws come in the order of Flaw.
std::vector<Flaw> judge_flaws(const Measures& measures, int width, int height);

}  // namespace quarterturn
