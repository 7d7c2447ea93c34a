#pragma once
// A picture as the bytes of a file.

#include <cstddef>
#include <opencv2/core.hpp>
#include <vector>

namespace quarterturn {

// A baseline JPEG of a picture in BGR (CV_8UC3); quality 1 … 100 as libjpeg counts; `dpi` dots per
// inch, 0: it does not say how many. Throws
// std::runtime_error for a picture that JPEG cannot hold: empty, or longer than 65,500 pixels.
std::vector<std::byte> jpeg_bytes(const cv::Mat& bgr, int quality, int dpi = 0);

}  // namespace quarterturn
