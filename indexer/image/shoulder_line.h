#pragma once
// Where the shoulders stand before the background.

#include <opencv2/core.hpp>
#include <vector>

#include "indexer/image/slopes.h"

namespace quarterturn {

enum class PictureSide { left, right };

// From outside to the neck, or to the hair that hides it: one point a column, in pixels. The edge
// that rises towards the head `shape` (CV_8UC1, 255 on head and hair; the size of the slopes) and
// has no other edge closely above it, so that folds, shadows and hems of the clothes are passed
// over; found by dynamic programming as live-wire does (Mortensen and Barrett, 1995). Empty where
// there is none.
std::vector<cv::Point2d> shoulder_line(const Slopes& slopes, const cv::Mat& shape,
                                       PictureSide side);

}  // namespace quarterturn
