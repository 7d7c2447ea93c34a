#include "indexer/image/codec.h"

namespace quarterturn {

Refusal ends_too_early() {
    return Refusal(
        "The file ends too early, so part of the picture is missing. Copy it from the card or "
        "phone "
        "again.");
}

Refusal is_damaged() {
    return Refusal("The picture inside the file is damaged. Copy it from the card or phone again.");
}

void check_size(std::int64_t width, std::int64_t height) {
    if (width <= 0 || height <= 0) throw is_damaged();
    if (width > most_pixels / height) {
        throw Refusal(
            "The file says its picture is " + std::to_string(width) + " × " +
            std::to_string(height) +
            " pixels, and no more than 250 megapixels are opened. Save a smaller copy and "
            "bring that in.");
    }
}

int shrink_factor(int width, int height, int long_edge) {
    if (long_edge <= 0) return 1;
    for (const int factor : {8, 4, 2}) {
        if (std::max(width, height) / factor >= long_edge) return factor;
    }
    return 1;
}

cv::Mat on_white(const cv::Mat& bgra) {
    cv::Mat bgr(bgra.size(), CV_8UC3);
    for (int y = 0; y < bgra.rows; ++y) {
        const auto* from = bgra.ptr<cv::Vec4b>(y);
        auto* to = bgr.ptr<cv::Vec3b>(y);
        for (int x = 0; x < bgra.cols; ++x) {
            const int alpha = from[x][3];
            for (int c = 0; c < 3; ++c) {
                to[x][c] =
                    static_cast<uchar>((from[x][c] * alpha + 255 * (255 - alpha) + 127) / 255);
            }
        }
    }
    return bgr;
}

}  // namespace quarterturn
