#include "indexer/image/hair_height.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "indexer/image/silhouette.h"

namespace quarterturn {
namespace {

constexpr double head_centimetres = 23;  // menton to vertex with hair: the demo heads'
constexpr double most_centimetres = 6;   // of difference: more is an outline gone wrong
constexpr int outline_edge = 256;        // pixels
constexpr int laid_height = 512;         // pixels: finer than the outline, for parts of its pixels

// The columns of the head, in heights of the first picture.
struct HeadColumns {
    double from = 0;
    double to = 0;
};

HeadColumns columns_of(const HeadPoints& points, double aspect) {
    constexpr double half_width = 0.32;  // of the head's height: its outermost columns are sides
    const Spot top = spot_of(points.top, aspect);
    const double half = half_width * distance(top, spot_of(points.bottom, aspect));
    return {top.x - half, top.x + half};
}

// The shape as it lies upon the first picture, 0 … 1.
cv::Mat laid_shape(const cv::Mat& bgr, const Similarity& lay, double aspect) {
    cv::Mat shape;
    shape_before_background(bgr, outline_edge).convertTo(shape, CV_32FC1, 1.0 / 255);
    const double scale = static_cast<double>(laid_height) / shape.rows;
    const cv::Matx23d place(lay.along * scale, -lay.across * scale, lay.x * laid_height,
                            lay.across * scale, lay.along * scale, lay.y * laid_height);
    cv::warpAffine(shape, shape, place, {cvRound(laid_height * aspect), laid_height});
    return shape;
}

// Where a column's shape begins, in pixels and parts of them.
std::optional<double> top_of_column(const cv::Mat& shape, int x) {
    for (int y = 1; y < shape.rows; ++y) {
        const float here = shape.at<float>(y, x);
        if (here < 0.5F) continue;
        const float above = shape.at<float>(y - 1, x);
        return y - 1 + (0.5 - above) / std::max(here - above, 1e-6F);
    }
    return std::nullopt;
}

// Not the highest column of all, which may be a strand astray.
std::optional<Spot> top_of_shape(const cv::Mat& shape, const HeadColumns& columns) {
    std::vector<std::pair<double, int>> tops;
    const int from = std::max(0, cvFloor(columns.from * laid_height));
    const int to = std::min(shape.cols, cvCeil(columns.to * laid_height));
    for (int x = from; x < to; ++x) {
        if (const auto top = top_of_column(shape, x)) tops.emplace_back(*top, x);
    }
    if (tops.empty()) return std::nullopt;
    const auto high = tops.begin() + std::ssize(tops) / 20;
    std::nth_element(tops.begin(), high, tops.end());
    return Spot{static_cast<double>(high->second) / laid_height, high->first / laid_height};
}

// Widens left and right to the shape's outermost columns above the chin.
void widen(HairHeight& height, const cv::Mat& shape, const HeadPoints& points) {
    constexpr double upper_part = 0.7;  // of the head: shoulders and neck are not looked at
    const double top = std::min(points.top.y, points.bottom.y);
    const double bottom = top + std::abs(points.bottom.y - points.top.y) * upper_part;
    const int from = std::clamp(cvRound(top * laid_height), 0, shape.rows - 1);
    const int to = std::clamp(cvRound(bottom * laid_height), from + 1, shape.rows);
    cv::Mat columns;
    cv::reduce(shape.rowRange(from, to), columns, 0, cv::REDUCE_MAX);
    for (int x = 0; x < columns.cols; ++x) {
        if (columns.at<float>(0, x) < 0.5F) continue;
        const double here = static_cast<double>(x) / laid_height;
        const bool none_yet = height.left == height.right;
        height.left = none_yet ? here : std::min(height.left, here);
        height.right = none_yet ? here + 1.0 / laid_height : std::max(height.right, here);
    }
}

}  // namespace

bool HairHeight::differs() const {
    return centimetres && std::abs(*centimetres) >= least_centimetres;
}

HairHeight hair_height(const cv::Mat& first, const cv::Mat& second, const HeadAlignment& alignment,
                       const HeadPoints& first_points) {
    const double aspect = static_cast<double>(first.cols) / first.rows;
    const HeadColumns columns = columns_of(first_points, aspect);
    const double head =
        distance(spot_of(first_points.top, aspect), spot_of(first_points.bottom, aspect));
    const cv::Mat first_shape = laid_shape(first, {}, aspect);
    const cv::Mat second_shape = laid_shape(second, alignment.second_onto_first, aspect);
    const auto first_top = top_of_shape(first_shape, columns);
    const auto second_top = top_of_shape(second_shape, columns);
    if (!first_top || !second_top || head <= 0) return {};
    HairHeight height{{}, *first_top, *second_top, 0, 0};
    for (const cv::Mat* shape : {&first_shape, &second_shape}) widen(height, *shape, first_points);
    const double centimetres = (first_top->y - second_top->y) / head * head_centimetres;
    if (std::abs(centimetres) <= most_centimetres) height.centimetres = centimetres;
    return height;
}

}  // namespace quarterturn
