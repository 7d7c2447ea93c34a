#pragma once

#include <opencv2/core.hpp>
#include <string>

namespace quarterturn {

// Draws one line into the foot of a picture (CV_8UC3, BGR), in ink on a band of paper that lets a
// little of it through; smaller where it would not fit. A QGuiApplication must exist.
void draw_line_on_picture(cv::Mat& bgr, const std::string& words);

}  // namespace quarterturn
