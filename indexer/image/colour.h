#pragma once
// How far apart two colours look.

#include <array>
#include <cstdint>

namespace quarterturn {

// CIE 1976 L*a*b* under D65, the white of sRGB.
struct Lab {
    double l = 0;
    double a = 0;
    double b = 0;
};

// sRGB (IEC 61966-2-1), 0 … 255 a channel.
Lab lab_of_srgb(std::array<std::uint8_t, 3> rgb);

// Linear light with sRGB's primaries; 1 is its white.
struct LinearRgb {
    double red = 0;
    double green = 0;
    double blue = 0;
};
LinearRgb linear_of_srgb(std::array<std::uint8_t, 3> rgb);
double luminance(const LinearRgb& light);  // CIE Y, 1 for white
Lab lab_of_linear(const LinearRgb& light);

// ΔE00 of ISO/CIE 11664-6 (CIE 142), with kL = kC = kH = 1. About 1 can just be seen side by side.
double colour_difference(const Lab& one, const Lab& other);

}  // namespace quarterturn
