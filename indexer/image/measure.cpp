#include "indexer/image/measure.h"

#include <algorithm>
#include <opencv2/img_hash.hpp>
#include <opencv2/imgproc.hpp>

#include "indexer/image/steepness.h"

namespace quarterturn {
namespace {

// A little more than the measuring edge changes nothing that is measured, and shrinking takes time.
cv::Mat brought_to_measuring_edge(const cv::Mat& luma) {
    const int long_edge = std::max(luma.cols, luma.rows);
    if (long_edge <= measuring_edge * 5 / 4) return luma;
    const double scale = static_cast<double>(measuring_edge) / long_edge;
    cv::Mat small;
    cv::resize(luma, small, {}, scale, scale, cv::INTER_AREA);
    return small;
}

double share_of(const cv::Mat& condition) {
    return static_cast<double>(cv::countNonZero(condition)) /
           static_cast<double>(condition.total());
}

}  // namespace

Measures measure(const cv::Mat& bgr) {
    if (bgr.empty()) return {};
    cv::Mat luma;
    cv::cvtColor(bgr, luma, cv::COLOR_BGR2GRAY);
    luma = brought_to_measuring_edge(luma);
    Measures measures;
    const Steepness steepness = measure_steepness(luma);
    measures.focus = steepness.least;
    measures.motion = steepness.one_sidedness;
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
