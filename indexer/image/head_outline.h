#pragma once
// What of a head's outline stays when the hair is done otherwise, also from behind: the top of the
// head, where hair lies close, and the shoulders beneath.

#include <array>
#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "indexer/image/similarity.h"

namespace quarterturn {

struct OutlinePoint {
    Spot at;        // in heights of the picture
    Spot outwards;  // of length 1
};
using OutlinePart = std::vector<OutlinePoint>;

struct HeadOutline {
    double width = 0;                      // of the head with its hair, in heights of the picture
    OutlinePart top;                       // as far round as it faces upwards
    std::array<OutlinePart, 2> shoulders;  // on the left and on the right of the picture
};

// Nothing when the head does not stand free of the background above and at the sides, or when a
// shoulder does not show.
std::optional<HeadOutline> head_outline(const cv::Mat& bgr);

}  // namespace quarterturn
