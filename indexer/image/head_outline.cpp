#include "indexer/image/head_outline.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "indexer/image/head_matching.h"
#include "indexer/image/shoulder_line.h"
#include "indexer/image/silhouette.h"
#include "indexer/image/slopes.h"

namespace quarterturn {
namespace {

constexpr int working_long_edge = 256;  // pixels
constexpr int shape_long_edge = 160;    // pixels: takes a third of the time

// A line smoothed over `reach` pixels either way, with its normals, which point to the left of one
// who walks along it.
OutlinePart smooth_part(const std::vector<cv::Point2d>& line, int reach, double height) {
    OutlinePart part;
    const int count = static_cast<int>(line.size());
    for (int i = 1; i + 1 < count; ++i) {
        const int near = std::min({reach, i, count - 1 - i});
        cv::Point2d sum;
        for (int j = i - near; j <= i + near; ++j) sum += line[j];
        const cv::Point2d along = line[i + near] - line[i - near];
        const double length = std::hypot(along.x, along.y);
        if (length == 0) continue;
        const cv::Point2d at = sum / ((2 * near + 1) * height);
        part.push_back({{at.x, at.y}, {along.y / length, -along.x / length}});
    }
    return part;
}

// Clockwise as one sees it, from the lowest point on.
std::vector<cv::Point2d> around(const cv::Mat& shape) {
    std::vector<std::vector<cv::Point>> contours;
    cv::findContours(shape, contours, cv::RETR_EXTERNAL, cv::CHAIN_APPROX_NONE);
    auto contour = *std::ranges::max_element(contours, {}, &std::vector<cv::Point>::size);
    std::ranges::rotate(contour, std::ranges::max_element(contour, {}, &cv::Point::y));
    if (cv::contourArea(contour, true) < 0) std::ranges::reverse(contour);
    std::vector<cv::Point2d> line;
    for (const cv::Point& point : contour) line.emplace_back(point.x + 0.5, point.y + 0.5);
    return line;
}

cv::Mat smooth_shape(const cv::Mat& bgr) {
    cv::Mat shape;
    cv::resize(shape_before_background(bgr, shape_long_edge), shape, bgr.size(), 0, 0,
               cv::INTER_LINEAR);
    return shape > 127;
}

int widest_row(const cv::Mat& shape, const cv::Rect& bounds) {
    int widest = 0;
    for (int y = bounds.y; y < bounds.y + bounds.height * 2 / 5; ++y) {
        widest = std::max(widest, cv::boundingRect(shape.row(y)).width);
    }
    return widest;
}

// From the brow up, so to say: beneath, hair that hangs stands further and further off.
OutlinePart top_part(const cv::Mat& shape, double top, double width) {
    constexpr double least_upwards = 0.26;  // 15 degrees above the horizontal
    constexpr double furthest_down = 0.5;   // in widths of the head
    OutlinePart part = smooth_part(around(shape), 6, shape.rows);
    std::erase_if(part, [&](const OutlinePoint& point) {
        return point.outwards.y > -least_upwards || point.at.y > top + furthest_down * width;
    });
    return part;
}

}  // namespace

std::optional<HeadOutline> head_outline(const cv::Mat& bgr) {
    const cv::Mat small = with_long_edge(bgr, working_long_edge);
    const cv::Mat shape = smooth_shape(small);
    const cv::Rect bounds = cv::boundingRect(shape);
    const int above = small.rows / 32 + 1;  // what is taken for background; see silhouette.cpp
    if (bounds.y <= above) return std::nullopt;
    HeadOutline outline;
    const double height = shape.rows;
    outline.width = widest_row(shape, bounds) / height;
    outline.top = top_part(shape, bounds.y / height, outline.width);
    const Slopes slopes = slopes_of(small);
    auto right = shoulder_line(slopes, shape, PictureSide::right);
    std::ranges::reverse(right);
    outline.shoulders = {smooth_part(shoulder_line(slopes, shape, PictureSide::left), 4, height),
                         smooth_part(right, 4, height)};
    const bool all =
        !outline.top.empty() && !outline.shoulders[0].empty() && !outline.shoulders[1].empty();
    if (!all) return std::nullopt;
    return outline;
}

}  // namespace quarterturn
