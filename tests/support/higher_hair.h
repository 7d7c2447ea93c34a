#pragma once

#include <opencv2/imgproc.hpp>

#include "tests/support/alike_photos.h"

namespace quarterturn {

// A demo photo with a bump of so many centimetres drawn on the crown, in its own hair's colour.
inline cv::Mat with_higher_hair(const CsvRow& row, const cv::Mat& picture, double centimetres) {
    const double to_pixels = picture.rows / std::stod(row.at("height"));
    const double centimetre = picture.rows / std::stod(row.at("frame_cm"));
    const cv::Point top(cvRound(std::stod(row.at("head_top_x")) * to_pixels),
                        cvRound(std::stod(row.at("head_top_y")) * to_pixels));
    cv::Mat higher = picture.clone();
    cv::ellipse(higher, top, {cvRound(4 * centimetre), cvRound(centimetres * centimetre)}, 0, 0,
                360, cv::Scalar(20, 22, 26), cv::FILLED, cv::LINE_AA);
    return higher;
}

}  // namespace quarterturn
