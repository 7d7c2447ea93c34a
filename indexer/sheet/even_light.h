#pragma once

#include <opencv2/core.hpp>

#include "indexer/image/light_difference.h"

namespace quarterturn {

// `second` (CV_8UC3, sRGB) as the first camera would have set its exposure and white balance: each
// channel by one factor in linear light, the same for all pixels.
cv::Mat lit_as_first(const cv::Mat& second, const LightDifference& difference);

}  // namespace quarterturn
