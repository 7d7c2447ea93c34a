#pragma once
// Lays one outline of a head upon another.

#include <optional>

#include "indexer/image/head_outline.h"
#include "indexer/image/similarity.h"

namespace quarterturn {

// The turn, scale and shift by which the second agrees best with the first, by least squares that
// leave out what lies far off (iterated closest points, Chen and Medioni, 1991; weights of Geman
// and McClure, 1987). Allows for hair that stands higher on one head, for hair that is wider at its
// sides, evenly left and right, and for shoulders that were held a little otherwise. Nothing where
// too little of both agrees. What remains unknown is how far round and how high the camera stood:
// see tests/accuracy/before_and_after_alignment_test.cpp for how exact it is.
std::optional<Similarity> lay_outlines(const HeadOutline& first, const HeadOutline& second);

}  // namespace quarterturn
