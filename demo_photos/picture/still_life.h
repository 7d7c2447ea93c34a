#pragma once

#include <opencv2/core.hpp>

namespace quarterturn::demo {

/// The leaf comb on a table by the window; linear like `Picture::linear`.
cv::Mat paint_still_life(cv::Size size);

}  // namespace quarterturn::demo
