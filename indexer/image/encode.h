#pragma once
// A picture as the bytes of a file.

#include <cstddef>
#include <opencv2/core.hpp>
#include <span>
#include <vector>

namespace quarterturn {

struct JpegWish {
    int quality = 90;                // 1 … 100 as libjpeg counts
    int dpi = 0;                     // dots per inch; 0: it does not say how many
    std::span<const std::byte> icc;  // of its colours; may be empty
    int restart_rows = 0;            // a restart after so many, a multiple of 16; 0: none
};

// A baseline JPEG of a picture in BGR (CV_8UC3), or with a fourth channel that is passed over
// (CV_8UC4). Throws std::runtime_error for a picture that JPEG cannot hold: empty, or longer than
// 65,500 pixels.
std::vector<std::byte> jpeg_bytes(const cv::Mat& picture, const JpegWish& wish);
std::vector<std::byte> jpeg_bytes(const cv::Mat& picture, int quality, int dpi = 0);

}  // namespace quarterturn
