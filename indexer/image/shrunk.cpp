#include <opencv2/imgproc.hpp>

#include "indexer/image/codec.h"

namespace quarterturn {

cv::Mat shrunk(const cv::Mat& pixels, int long_edge) {
    const int factor = shrink_factor(pixels.cols, pixels.rows, long_edge);
    if (factor == 1) return pixels;
    const cv::Size size(std::max(1, pixels.cols / factor), std::max(1, pixels.rows / factor));
    cv::Mat small;
    cv::resize(pixels, small, size, 0, 0, cv::INTER_AREA);
    return small;
}

}  // namespace quarterturn
