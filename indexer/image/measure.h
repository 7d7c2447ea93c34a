#pragma once
// Numbers measured on a decoded picture (BGR, upright, sRGB).

#include <opencv2/core.hpp>

#include "indexer/record/photo.h"

namespace quarterturn {

// The picture may be of any size; it is brought to a long edge of 1024 px first.
Measures measure(const cv::Mat& bgr);

// DCT hash of OpenCV's img_hash; the first byte is the highest.
Fingerprint fingerprint(const cv::Mat& bgr);

}  // namespace quarterturn
