#include "indexer/image/ycbcr.h"

namespace quarterturn {

std::optional<LumaWeights> luma_weights(int matrix_coefficients) {
    switch (matrix_coefficients) {
        case 1:
            return LumaWeights{0.2126, 0.0722};
        case 4:
            return LumaWeights{0.30, 0.11};
        case 2:
        case 5:
        case 6:
            return LumaWeights{0.299, 0.114};
        case 7:
            return LumaWeights{0.212, 0.087};
        case 9:
            return LumaWeights{0.2627, 0.0593};
        default:
            return std::nullopt;
    }
}

cv::Mat bgr_of_ycbcr(const std::array<cv::Mat, 3>& planes, LumaWeights weights, bool full_range) {
    const double black = full_range ? 0 : 16;
    const double light = full_range ? 1 : 255.0 / 219;
    const double colour = full_range ? 1 : 255.0 / 224;
    const double green = 1 - weights.red - weights.blue;
    const double blue_of_cb = 2 * (1 - weights.blue) * colour;
    const double red_of_cr = 2 * (1 - weights.red) * colour;
    const double green_of_cb = -weights.blue / green * blue_of_cb;
    const double green_of_cr = -weights.red / green * red_of_cr;
    const auto row = [&](double of_cb, double of_cr) {
        return std::array{light, of_cb, of_cr, -light * black - 128 * (of_cb + of_cr)};
    };
    const std::array rows{row(blue_of_cb, 0), row(green_of_cb, green_of_cr), row(0, red_of_cr)};
    cv::Mat together;
    cv::merge(planes.data(), planes.size(), together);
    cv::Mat bgr;
    cv::transform(together, bgr, cv::Mat(3, 4, CV_64F, const_cast<double*>(rows.front().data())));
    return bgr;
}

}  // namespace quarterturn
