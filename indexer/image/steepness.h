#pragma once
// How steep the edges of a picture are, by direction: what tells a sharp photo from one that is out
// of focus or moved.
//
// The variance of the Laplacian (Pech-Pacheco et al., 2000) measures how much fine detail there is,
// and so mistakes a plain wall for a blurred photo and hair for a sharp one. Here each place is
// measured against itself: the mean square slope over a few pixels, divided by that over many. An
// edge that comes at once is many times steeper nearby; one that is spread out is as steep over
// both, whatever its contrast, the exposure, and the amount of texture around it. Only the places
// of most contrast in each direction count (the outline of the head, features, strands against the
// light), so neither the background's area nor the grain in smooth places has a say; and each
// direction has places of its own, so that long hair, which changes little along its strands, is
// not taken for movement.

#include <opencv2/core.hpp>

namespace quarterturn {

struct Steepness {
    // The least of all directions: about 1.5 when edges are spread over ten pixels and more, 3 and
    // above when they are sharp. 0 for a picture too small or too plain to tell.
    double least = 0;
    // How strongly steepness turns with direction, 0 … 1: near 0 when edges are spread alike all
    // round (out of focus), more when they are spread one way only (moved).
    double one_sidedness = 0;
};

// `luma`: CV_8UC1, brought to the measuring edge.
Steepness measure_steepness(const cv::Mat& luma);

}  // namespace quarterturn
