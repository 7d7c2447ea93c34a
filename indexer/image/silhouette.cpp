#include "indexer/image/silhouette.h"

#include <algorithm>
#include <opencv2/imgproc.hpp>
#include <vector>

namespace quarterturn {
namespace {

constexpr int working_edge = 128;  // pixels: enough for a head's outline, and quick

// From the first pixel of the shape in a row to its last.
struct Extent {
    int left = 0;
    int width = 0;
};
using Extents = std::vector<Extent>;  // one a row

struct Border {
    int width = 0;   // left and right
    int height = 0;  // above
};

// What is taken for background. Below the head there are shoulders, so the lower border is not.
Border border(cv::Size picture) {
    return {std::max(2, picture.width / 24), std::max(2, picture.height / 32)};
}

// 255 where the picture is not background.
cv::Mat separate(const cv::Mat& small) {
    const auto [side, top] = border(small.size());
    cv::Mat labels(small.size(), CV_8UC1, cv::Scalar(cv::GC_BGD));
    labels({side, top, small.cols - 2 * side, small.rows - top}).setTo(cv::GC_PR_BGD);
    const cv::Point middle(small.cols / 2, small.rows / 2);
    cv::ellipse(labels, middle, {small.cols / 3, small.rows / 3}, 0, 0, 360,
                cv::Scalar(cv::GC_PR_FGD), cv::FILLED);
    constexpr int rounds = 3;
    cv::Mat background, foreground;
    cv::setRNGSeed(
        1);  // GrabCut's first guess draws at random; the same photo gets the same answer
    cv::grabCut(small, labels, {}, background, foreground, rounds, cv::GC_INIT_WITH_MASK);
    return (labels == cv::GC_FGD) | (labels == cv::GC_PR_FGD);
}

// The largest connected shape alone, without strands thinner than a few pixels.
cv::Mat largest_shape(const cv::Mat& mask) {
    cv::Mat smooth;
    cv::morphologyEx(mask, smooth, cv::MORPH_OPEN,
                     cv::getStructuringElement(cv::MORPH_ELLIPSE, {5, 5}));
    cv::Mat labels, stats, centres;
    const int count = cv::connectedComponentsWithStats(smooth, labels, stats, centres);
    int largest = 0;
    for (int i = 1; i < count; ++i) {
        const auto area = [&](int label) { return stats.at<int>(label, cv::CC_STAT_AREA); };
        if (largest == 0 || area(i) > area(largest)) largest = i;
    }
    return largest == 0 ? cv::Mat::zeros(mask.size(), CV_8UC1) : cv::Mat(labels == largest);
}

Extent extent_of_row(const cv::Mat& shape, int row) {
    const uchar* pixels = shape.ptr(row);
    const auto* end = pixels + shape.cols;
    const auto* first = std::find(pixels, end, 255);
    if (first == end) return {};
    const auto* last = end;
    while (*(last - 1) != 255) --last;
    return {static_cast<int>(first - pixels), static_cast<int>(last - first)};
}

Extents extents_of(const cv::Mat& shape) {
    Extents extents;
    for (int row = 0; row < shape.rows; ++row) extents.push_back(extent_of_row(shape, row));
    return extents;
}

// The row where the shape is narrowest before it widens again to the shoulders; where it does not,
// because hair hangs over the neck, the row that a head of this width reaches. The proportions are
// those of the demo head with its hair, from behind and from the side.
Extents::const_iterator row_of_neck(const Extents& extents, Extents::const_iterator top,
                                    Extents::const_iterator widest) {
    constexpr double tallest = 1.3;
    constexpr double usual = 1.02;
    constexpr double neck_of_width = 0.7;
    constexpr double widening = 1.05;
    const auto down = [&](double heads) {
        return top +
               std::min<std::ptrdiff_t>(extents.end() - top - 1, cvRound(heads * widest->width));
    };
    const auto last = down(tallest);
    if (last <= widest) return widest;
    const auto neck = std::min_element(widest, last, [](const Extent& one, const Extent& other) {
        return one.width < other.width;
    });
    const bool widens_again = last->width > widening * neck->width;
    return widens_again && neck->width < neck_of_width * widest->width ? neck : down(usual);
}

// In pixels of the small picture.
std::optional<cv::Rect> head_of(const Extents& extents) {
    const auto top = std::ranges::find_if(extents, [](const Extent& row) { return row.width > 0; });
    if (top == extents.end()) return std::nullopt;
    // A head is widest in its upper part; further down are shoulders.
    const auto rows = static_cast<std::ptrdiff_t>(extents.size());
    const auto upper_end = top + std::min(extents.end() - top, rows * 2 / 5);
    const auto widest = std::max_element(
        top, upper_end,
        [](const Extent& one, const Extent& other) { return one.width < other.width; });
    const auto neck = row_of_neck(extents, top, widest);
    return cv::Rect(widest->left, static_cast<int>(top - extents.begin()), widest->width,
                    static_cast<int>(neck - top));
}

// Whether it stands free of the border, has the size and proportions of a head, and is as full: an
// ellipse fills 0.79 of the rectangle round it.
bool is_sure(const cv::Rect& head, const cv::Mat& shape) {
    const cv::Size picture = shape.size();
    const cv::Rect inner(border(picture).width + 1, border(picture).height + 1,
                         picture.width - 2 * border(picture).width - 2, picture.height);
    const double proportion = static_cast<double>(head.height) / head.width;
    if ((head & inner) != head || head.height * 5 < picture.height) return false;
    constexpr double least_filled = 0.65;
    return proportion > 0.7 && proportion < 1.5 &&
           cv::countNonZero(shape(head)) >= least_filled * head.area();
}

cv::Mat shrunk(const cv::Mat& bgr, double scale) {
    cv::Mat small;
    cv::resize(bgr, small, {}, scale, scale, cv::INTER_AREA);
    return small;
}

}  // namespace

cv::Mat shape_before_background(const cv::Mat& bgr, int long_edge) {
    const double scale =
        std::min(1.0, static_cast<double>(long_edge) / std::max(bgr.cols, bgr.rows));
    return largest_shape(separate(shrunk(bgr, scale)));
}

std::optional<cv::Rect> find_silhouette(const cv::Mat& bgr) {
    const double scale =
        std::min(1.0, static_cast<double>(working_edge) / std::max(bgr.cols, bgr.rows));
    const cv::Mat small = shrunk(bgr, scale);
    if (std::min(small.cols, small.rows) < working_edge / 4) return std::nullopt;
    const cv::Mat shape = largest_shape(separate(small));
    const auto head = head_of(extents_of(shape));
    if (!head || !is_sure(*head, shape)) return std::nullopt;
    const cv::Rect whole(cvRound(head->x / scale), cvRound(head->y / scale),
                         cvRound(head->width / scale), cvRound(head->height / scale));
    return whole & cv::Rect({0, 0}, bgr.size());
}

}  // namespace quarterturn
