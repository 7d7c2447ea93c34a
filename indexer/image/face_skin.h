#pragma once
// The bare skin of a head in a picture: face, ear and neck, which stay as they are when the hair is
// done otherwise.

#include <opencv2/core.hpp>

#include "indexer/image/head.h"

namespace quarterturn {

// 255 (CV_8UC1, long edge 160 pixels) on the skin that hangs together with a face, and on its edge
// against the background, but not on its edge against hair or clothes. Learnt from the middle of
// the face (GrabCut: Rother, Kolmogorov and Blake, 2004). Empty where no face shows.
cv::Mat face_skin(HeadFinder& finder, const cv::Mat& bgr);

}  // namespace quarterturn
