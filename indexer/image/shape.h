#pragma once
// Pictures cut to a shape.

#include <opencv2/core.hpp>
#include <optional>

namespace quarterturn {

// The largest window of this width over height inside the picture, centred on the head where one is
// known, else in the middle; in pixels.
cv::Rect window_of_shape(cv::Size picture, double width_over_height,
                         const std::optional<cv::Rect>& head);

}  // namespace quarterturn
