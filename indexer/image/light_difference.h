#pragma once
// How differently two photos of a head are lit, told by what lies behind it: hair and skin change
// between before and after, the wall does not.

#include <opencv2/core.hpp>
#include <optional>

namespace quarterturn {

struct LightDifference {
    double exposure_ev = 0;         // how much brighter the second is; negative: darker
    double white_balance_de00 = 0;  // ΔE00 of the two backgrounds made equally light, L* about 50
    // Only bright places could be compared, where film-like curves roll off: the true differences
    // are as large or larger.
    bool at_least = false;
    // The second over the first in linear light, by channel.
    double red_ev = 0;
    double green_ev = 0;
    double blue_ev = 0;
};

// Both CV_8UC3 in sRGB, upright, the same way round, and taken so that the same background lies at
// about the same places. Compares what is background in both (image/silhouette.h) place by place,
// where neither is nearly black nor bright, since cameras bend the scale there; where that is less
// than a fiftieth of the picture, also the bright places that are not near white. The median
// decides. Nothing when too little is left for that.
std::optional<LightDifference> light_difference(const cv::Mat& first, const cv::Mat& second);

}  // namespace quarterturn
