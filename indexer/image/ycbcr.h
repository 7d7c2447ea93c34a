#pragma once
// Red, green and blue from brightness and two differences of colour, as video codecs store them
// (ITU-T H.273, "Coding-independent code points").

#include <array>
#include <opencv2/core.hpp>
#include <optional>

namespace quarterturn {

// What red and blue weigh in the brightness; green is the rest.
struct LumaWeights {
    double red = 0;
    double blue = 0;
};

// Of a number in the table of matrix coefficients of H.273; nothing for those that mix otherwise.
// 2, unspecified, is taken for 6, as the files of phones mean it (common practice).
std::optional<LumaWeights> luma_weights(int matrix_coefficients);

// From Y, Cb and Cr of one size, 8 bits each; without the full range, black is 16 and white 235.
cv::Mat bgr_of_ycbcr(const std::array<cv::Mat, 3>& planes, LumaWeights weights, bool full_range);

}  // namespace quarterturn
