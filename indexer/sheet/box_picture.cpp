#include "indexer/sheet/box_picture.h"

#include <cmath>

#include "indexer/image/shrink.h"
#include "indexer/sheet/photo_file.h"

namespace quarterturn {
namespace {

// A picture decoded while laying out will do when it has at least this share of the dots that the
// box could show: the difference cannot be seen at 300 dots per inch.
constexpr double near_enough = 0.85;

// The long edge that the whole picture needs for its part to fill the box.
int long_edge_for(const Part& part, cv::Size pixels) {
    const double width = pixels.width / std::max(part.width, 0.01);
    const double height = pixels.height / std::max(part.height, 0.01);
    return static_cast<int>(std::ceil(std::max(width, height)));
}

cv::Rect part_of(const cv::Mat& picture, const Part& part, bool mirrored) {
    const double left = mirrored ? 1 - part.x - part.width : part.x;
    const int x = static_cast<int>(std::lround(left * picture.cols));
    const int y = static_cast<int>(std::lround(part.y * picture.rows));
    const int right = static_cast<int>(std::lround((left + part.width) * picture.cols));
    const int bottom = static_cast<int>(std::lround((part.y + part.height) * picture.rows));
    const cv::Rect whole(0, 0, picture.cols, picture.rows);
    return cv::Rect(x, y, std::max(right - x, 1), std::max(bottom - y, 1)) & whole;
}

// The middle of it, in the proportions of `shape`.
cv::Rect middle(cv::Size size, cv::Size shape) {
    const double scale = std::min(static_cast<double>(size.width) / shape.width,
                                  static_cast<double>(size.height) / shape.height);
    const int width = std::clamp(cvRound(shape.width * scale), 1, size.width);
    const int height = std::clamp(cvRound(shape.height * scale), 1, size.height);
    return {(size.width - width) / 2, (size.height - height) / 2, width, height};
}

bool has_enough(const cv::Mat& picture, const PhotoItem& item, cv::Size pixels) {
    const int wanted = long_edge_for(item.part, pixels);
    return std::max(picture.cols, picture.rows) >= near_enough * wanted;
}

BoxPicture decoded_for(const PhotoItem& item, cv::Size pixels, Decoder& decoder, FileSystem& disk) {
    if (!item.picture.empty() && has_enough(item.picture, item, pixels)) return {item.picture, {}};
    if (!item.small_file.empty()) {
        const Decoded small = decode_file(disk, decoder, item.small_file, 1, 0);
        if (small.ok() && has_enough(small.bgr, item, pixels)) return {small.bgr, {}};
    }
    Decoded decoded = decode_file(disk, decoder, item.file, item.orientation,
                                  long_edge_for(item.part, pixels), item.sha256);
    return {decoded.bgr, decoded.refused};
}

cv::Mat fitted(const cv::Mat& picture, const PhotoItem& item, cv::Size pixels) {
    const cv::Mat part = picture(part_of(picture, item.part, item.mirrored));
    cv::Mat result = part(middle(part.size(), pixels));
    if (result.cols > pixels.width && result.rows >= pixels.height) {
        result = shrunk_to(result, pixels);
    }
    if (item.mirrored) {
        cv::Mat turned;
        cv::flip(result, turned, 1);
        result = turned;
    }
    return result.isContinuous() && result.data != item.picture.data ? result : result.clone();
}

}  // namespace

BoxPicture picture_for(const PhotoItem& item, cv::Size pixels, Decoder& decoder, FileSystem& disk) {
    BoxPicture result = decoded_for(item, pixels, decoder, disk);
    if (!result.problem.empty()) return {{}, result.problem};
    return {fitted(result.bgr, item, pixels), {}};
}

}  // namespace quarterturn
