#pragma once
// What the hair in a picture looks like, for finding pictures of hair like it: its colour where
// there is surely hair, which way its edges run, and the outline of head and hair. Colour is told
// in a way that exposure does not change, and white balance little.

#include <opencv2/core.hpp>

#include "indexer/image/head.h"
#include "indexer/record/hair_look.h"

namespace quarterturn {

// Changes when what describe_hair() answers does, so that looks that were kept are made anew.
inline constexpr int hair_look_version = 1;

// `bgr` upright and the right way round. Nothing is told where no head is found.
HairLook describe_hair(HeadFinder& finder, const cv::Mat& bgr);

}  // namespace quarterturn
