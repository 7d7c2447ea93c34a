#include "indexer/sheet/even_light.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "indexer/image/colour.h"

namespace quarterturn {
namespace {

// The inverse of linear_of_srgb(), IEC 61966-2-1.
double srgb_of_linear(double light) {
    constexpr double straight_below = 0.0031308;
    return light <= straight_below ? 12.92 * light : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
}

std::uint8_t lit(int value, double factor) {
    const auto grey = static_cast<std::uint8_t>(value);
    const double light = linear_of_srgb({grey, grey, grey}).green * factor;
    return cv::saturate_cast<std::uint8_t>(255 * srgb_of_linear(std::min(light, 1.0)));
}

}  // namespace

cv::Mat lit_as_first(const cv::Mat& second, const LightDifference& difference) {
    const std::array factors{std::exp2(-difference.blue_ev), std::exp2(-difference.green_ev),
                             std::exp2(-difference.red_ev)};
    cv::Mat table(1, 256, CV_8UC3);
    for (int value = 0; value < 256; ++value) {
        for (int channel = 0; channel < 3; ++channel) {
            table.at<cv::Vec3b>(0, value)[channel] =
                lit(value, factors[static_cast<std::size_t>(channel)]);
        }
    }
    cv::Mat result;
    cv::LUT(second, table, result);
    return result;
}

}  // namespace quarterturn
