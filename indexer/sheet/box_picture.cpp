#include "indexer/sheet/box_picture.h"

#include <cmath>
#include <opencv2/imgproc.hpp>

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

// But for being turned.
bool is_made_for(const PhotoItem& item, cv::Size pixels) {
    return item.ahead.valid() && item.ahead.get().size() == pixels;
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
    const cv::Mat result = part(middle(part.size(), pixels));
    if (result.cols > pixels.width && result.rows >= pixels.height) {
        return shrunk_to(result, pixels);
    }
    return result.isContinuous() ? result : result.clone();
}

cv::Mat turned_if(bool mirrored, const cv::Mat& picture) {
    if (!mirrored) return picture;
    cv::Mat turned;
    cv::flip(picture, turned, 1);
    return turned;
}

}  // namespace

cv::Size pixels_of(const Box& box, double dpi) {
    return {std::max(1, cvRound(box.width / 25.4 * dpi)),
            std::max(1, cvRound(box.height / 25.4 * dpi))};
}

cv::Mat on_paper(const cv::Mat& bgr) {
    if (bgr.channels() == 4) return bgr;
    cv::Mat with_fourth;
    cv::cvtColor(bgr, with_fourth, cv::COLOR_BGR2BGRA);
    return with_fourth;
}

BoxPicture picture_for(const PhotoItem& item, cv::Size pixels, Decoder& decoder, FileSystem& disk) {
    if (is_made_for(item, pixels)) return {turned_if(item.mirrored, item.ahead.get()), {}};
    BoxPicture result = decoded_for(item, pixels, decoder, disk);
    if (!result.problem.empty()) return {{}, result.problem};
    return {turned_if(item.mirrored, fitted(result.bgr, item, pixels)), {}};
}

cv::Mat small_picture_for(const PhotoItem& item, cv::Size pixels, Decoder& decoder,
                          FileSystem& disk) {
    if (item.small_file.empty()) return {};
    const Decoded small = decode_file(disk, decoder, item.small_file, 1, 0);
    if (!small.ok() || !has_enough(small.bgr, item, pixels)) return {};
    return on_paper(fitted(small.bgr, item, pixels));
}

}  // namespace quarterturn
