#include "indexer/image/colour.h"

#include <cmath>
#include <numbers>

namespace quarterturn {
namespace {

constexpr double degree = std::numbers::pi / 180;

double linear(std::uint8_t channel) {
    const double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

// CIE 15: the cube root, and a straight line near black.
double lab_curve(double share_of_white) {
    constexpr double bend = 216.0 / 24389;
    return share_of_white > bend ? std::cbrt(share_of_white)
                                 : (24389.0 / 27 * share_of_white + 16) / 116;
}

// 0 … 360; grey has no hue and answers 0.
double hue_degrees(double a, double b) {
    if (a == 0 && b == 0) return 0;
    const double hue = std::atan2(b, a) / degree;
    return hue < 0 ? hue + 360 : hue;
}

// 1 for vivid colours, 0 for greys: how far chroma to the seventh exceeds that of 25.
double vividness(double chroma) {
    const double seventh = std::pow(chroma, 7);
    return std::sqrt(seventh / (seventh + std::pow(25.0, 7)));
}

// From one hue to the other the short way round, in degrees.
double hue_step(double from, double to) {
    const double step = to - from;
    if (step > 180) return step - 360;
    return step < -180 ? step + 360 : step;
}

double mean_hue(double one, double other) {
    const double sum = one + other;
    if (std::abs(one - other) <= 180) return sum / 2;
    return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}

double hue_weight(double hue) {
    return 1 - 0.17 * std::cos((hue - 30) * degree) + 0.24 * std::cos(2 * hue * degree) +
           0.32 * std::cos((3 * hue + 6) * degree) - 0.20 * std::cos((4 * hue - 63) * degree);
}

}  // namespace

LinearRgb linear_of_srgb(std::array<std::uint8_t, 3> rgb) {
    return {linear(rgb[0]), linear(rgb[1]), linear(rgb[2])};
}

double luminance(const LinearRgb& light) {
    return 0.2126 * light.red + 0.7152 * light.green + 0.0722 * light.blue;
}

Lab lab_of_linear(const LinearRgb& light) {
    const auto& [red, green, blue] = light;
    // IEC 61966-2-1, each row over the white's own value.
    const double x = lab_curve((0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505);
    const double y = lab_curve(luminance(light));
    const double z = lab_curve((0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.0890);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

Lab lab_of_srgb(std::array<std::uint8_t, 3> rgb) {
    return lab_of_linear(linear_of_srgb(rgb));
}

// Step by step as in Sharma, Wu and Dalal (2005), "The CIEDE2000 color-difference formula".
double colour_difference(const Lab& one, const Lab& other) {
    const double chroma_mean = (std::hypot(one.a, one.b) + std::hypot(other.a, other.b)) / 2;
    const double stretch = 1 + 0.5 * (1 - vividness(chroma_mean));
    const double chroma_one = std::hypot(stretch * one.a, one.b);
    const double chroma_other = std::hypot(stretch * other.a, other.b);
    const double hue_one = hue_degrees(stretch * one.a, one.b);
    const double hue_other = hue_degrees(stretch * other.a, other.b);
    const bool grey = chroma_one * chroma_other == 0;

    const double lightness = (one.l + other.l) / 2 - 50;
    const double chroma = (chroma_one + chroma_other) / 2;
    const double hue = grey ? hue_one + hue_other : mean_hue(hue_one, hue_other);

    const double lightness_scale =
        1 + 0.015 * lightness * lightness / std::sqrt(20 + lightness * lightness);
    const double chroma_scale = 1 + 0.045 * chroma;
    const double hue_scale = 1 + 0.015 * chroma * hue_weight(hue);

    const double step = grey ? 0 : hue_step(hue_one, hue_other);
    const double by_lightness = (other.l - one.l) / lightness_scale;
    const double by_chroma = (chroma_other - chroma_one) / chroma_scale;
    const double by_hue =
        2 * std::sqrt(chroma_one * chroma_other) * std::sin(step / 2 * degree) / hue_scale;

    const double turn = 60 * degree * std::exp(-std::pow((hue - 275) / 25, 2));
    const double blue_twist = -2 * vividness(chroma) * std::sin(turn);
    return std::sqrt(by_lightness * by_lightness + by_chroma * by_chroma + by_hue * by_hue +
                     blue_twist * by_chroma * by_hue);
}

}  // namespace quarterturn
