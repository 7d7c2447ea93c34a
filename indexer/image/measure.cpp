#include "indexer/image/measure.h"

#include <algorithm>
#include <array>
#include <opencv2/img_hash.hpp>
#include <opencv2/imgproc.hpp>
#include <vector>

namespace quarterturn {
namespace {

cv::Mat brought_to_measuring_edge(const cv::Mat& picture) {
    const int long_edge = std::max(picture.cols, picture.rows);
    if (long_edge <= measuring_edge) return picture;
    const double scale = static_cast<double>(measuring_edge) / long_edge;
    cv::Mat small;
    cv::resize(picture, small, {}, scale, scale, cv::INTER_AREA);
    return small;
}

double share_of(const cv::Mat& condition) {
    return static_cast<double>(cv::countNonZero(condition)) /
           static_cast<double>(condition.total());
}

// The variance of the Laplacian in each block that holds some contrast, over the variance of the
// block itself; sorted.
std::vector<double> block_sharpness(const cv::Mat& luma) {
    constexpr int block = 32;
    constexpr double least_contrast = 25;  // variance, in squared steps of 255
    cv::Mat laplacian;
    cv::Laplacian(luma, laplacian, CV_32F);
    std::vector<double> values;
    for (int y = 0; y + block <= luma.rows; y += block) {
        for (int x = 0; x + block <= luma.cols; x += block) {
            const cv::Rect area(x, y, block, block);
            cv::Scalar mean, spread, edge_mean, edge_spread;
            cv::meanStdDev(luma(area), mean, spread);
            cv::meanStdDev(laplacian(area), edge_mean, edge_spread);
            const double contrast = spread[0] * spread[0];
            if (contrast >= least_contrast) {
                values.push_back(edge_spread[0] * edge_spread[0] / contrast);
            }
        }
    }
    std::ranges::sort(values);
    return values;
}

double percentile(const std::vector<double>& sorted, double share) {
    if (sorted.empty()) return 0;
    return sorted[static_cast<std::size_t>(share * static_cast<double>(sorted.size() - 1))];
}

// How much of the change over four pixels happens within one, along `step`.
double directional_sharpness(const cv::Mat& luma, cv::Point step) {
    const auto mean_square_change = [&](int reach) {
        const int dx = step.x * reach;
        const int dy = step.y * reach;
        const cv::Rect from(std::max(0, -dx), std::max(0, -dy), luma.cols - std::abs(dx),
                            luma.rows - std::abs(dy));
        const cv::Rect to = from + cv::Point(dx, dy);
        return cv::norm(luma(from), luma(to), cv::NORM_L2SQR) / static_cast<double>(from.area());
    };
    constexpr int far = 4;
    const double far_change = mean_square_change(far);
    return far_change > 0 ? mean_square_change(1) / far_change : 0;
}

double anisotropy(const cv::Mat& luma) {
    if (std::min(luma.cols, luma.rows) < 8) return 0;
    constexpr std::array<std::array<int, 2>, 4> steps{{{1, 0}, {0, 1}, {1, 1}, {1, -1}}};
    std::array<double, 4> along{};
    std::ranges::transform(steps, along.begin(), [&](const auto& step) {
        return directional_sharpness(luma, {step[0], step[1]});
    });
    const auto [least, most] = std::ranges::minmax(along);
    return most > 0 ? 1 - least / most : 0;
}

}  // namespace

Measures measure(const cv::Mat& bgr) {
    if (bgr.empty()) return {};
    cv::Mat luma;
    cv::cvtColor(brought_to_measuring_edge(bgr), luma, cv::COLOR_BGR2GRAY);
    Measures measures;
    measures.focus = percentile(block_sharpness(luma), 0.9);
    measures.motion = anisotropy(luma);
    measures.mean_light = cv::mean(luma)[0] / 255;
    measures.clipped_shadows = share_of(luma <= 4);
    measures.clipped_highlights = share_of(luma >= 251);
    return measures;
}

Fingerprint fingerprint(const cv::Mat& bgr) {
    if (bgr.empty()) return 0;
    // img_hash would pick single pixels out of a large picture; their mean is steadier.
    cv::Mat small;
    cv::resize(bgr, small, {32, 32}, 0, 0, cv::INTER_AREA);
    cv::Mat hash;
    cv::img_hash::pHash(small, hash);
    Fingerprint value = 0;
    for (int i = 0; i < hash.cols; ++i) value = value << 8 | hash.at<uchar>(0, i);
    return value;
}

}  // namespace quarterturn
