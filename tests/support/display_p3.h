#pragma once
// Colours in Display P3, by the published formulas.

#include <array>
#include <cmath>
#include <cstdint>

namespace quarterturn {

using Rgb = std::array<std::uint8_t, 3>;

// The curve that sRGB (IEC 61966-2-1) and Display P3 share.
inline double to_linear(double value) {
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}
inline double to_curve(double value) {
    return value <= 0.0031308 ? value * 12.92 : 1.055 * std::pow(value, 1 / 2.4) - 0.055;
}

// CSS Color 4, "Sample code for color conversions": linear sRGB to XYZ and XYZ to linear P3,
// multiplied out.
inline Rgb p3_of_srgb(const Rgb& srgb) {
    constexpr double matrix[3][3] = {{0.8224619688, 0.1775380312, 0},
                                     {0.0331941989, 0.9668058011, 0},
                                     {0.0170826307, 0.0723974407, 0.9105199286}};
    Rgb p3{};
    for (std::size_t row = 0; row < 3; ++row) {
        double light = 0;
        for (std::size_t column = 0; column < 3; ++column) {
            light += matrix[row][column] * to_linear(srgb[column] / 255.0);
        }
        p3[row] = static_cast<std::uint8_t>(std::lround(255 * to_curve(light)));
    }
    return p3;
}

}  // namespace quarterturn
