#pragma once
// Turning a picture by its EXIF orientation (EXIF 2.32, tag 0x0112).

#include <opencv2/core.hpp>

namespace quarterturn {

// The value itself when it is 1 … 8; any other is taken as 1, as if the tag were absent.
constexpr int known_orientation(int value) {
    return value >= 1 && value <= 8 ? value : 1;
}

cv::Mat upright(const cv::Mat& stored, int orientation);

// Whether width and height change places.
constexpr bool turns_sideways(int orientation) {
    return orientation >= 5 && orientation <= 8;
}

}  // namespace quarterturn
