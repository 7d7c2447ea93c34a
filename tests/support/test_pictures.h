#pragma once
// Small pictures whose every quarter can be told from the others.

#include <cstddef>
#include <cstring>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <string>
#include <vector>

namespace quarterturn {

// Red top left, green top right, blue bottom left, white bottom right.
inline cv::Mat four_quarters(int width, int height) {
    cv::Mat bgr(height, width, CV_8UC3, cv::Scalar(255, 255, 255));
    const int x = width / 2;
    const int y = height / 2;
    bgr({0, 0, x, y}).setTo(cv::Scalar(0, 0, 255));
    bgr({x, 0, width - x, y}).setTo(cv::Scalar(0, 255, 0));
    bgr({0, y, x, height - y}).setTo(cv::Scalar(255, 0, 0));
    return bgr;
}

// `ending` as OpenCV takes it: ".jpg", ".png", ".tif", ".webp".
inline std::vector<std::byte> encoded(const cv::Mat& picture, const std::string& ending,
                                      const std::vector<int>& wishes = {}) {
    std::vector<uchar> file;
    cv::imencode(ending, picture, file, wishes);
    std::vector<std::byte> bytes(file.size());
    std::memcpy(bytes.data(), file.data(), file.size());
    return bytes;
}

}  // namespace quarterturn
