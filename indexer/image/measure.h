#pragma once
// Numbers measured on a decoded picture (BGR, upright, sRGB).

#include <opencv2/core.hpp>

#include "indexer/record/photo.h"

namespace quarterturn {

// The long edge at which pictures are measured, in pixels: what is left of a photo of 12 megapixels
// (4000 × 3000, 4032 × 3024) at a quarter, which costs the JPEG decoder least.
inline constexpr int measuring_edge = 960;

// The picture may be of any size; one larger by a quarter or more is brought to a long edge of
// `measuring_edge` first.
// Uses OpenCV's own threads; a caller that measures one photo on each of its threads says
// cv::setNumThreads(1).
Measures measure(const cv::Mat& bgr);

// DCT hash of OpenCV's img_hash; the first byte is the highest.
Fingerprint fingerprint(const cv::Mat& bgr);

}  // namespace quarterturn
