#pragma once
// From a file's own colours to sRGB (IEC 61966-2-1), by its ICC profile. Phones tag their photos
// Display P3; shown as if they were sRGB, hair comes out duller than it is.

#include <cstddef>
#include <opencv2/core.hpp>
#include <span>
#include <vector>

namespace quarterturn {

// `pixels`: 8 bits a channel, grey, BGR, or CMYK (255 is full ink). Answers BGR in sRGB. Pixels
// whose profile is absent, damaged or of another kind than they are taken as sRGB; CMYK without a
// profile as inks that each swallow their complement. Relative colorimetric with black point
// compensation.
cv::Mat to_srgb(const cv::Mat& pixels, std::span<const std::byte> icc);

struct Chromaticity {  // CIE 1931 xy
    double x = 0;
    double y = 0;
};

// An ICC profile of a display with these primaries and the sRGB curve; empty when they make none.
std::vector<std::byte> make_profile(Chromaticity white, Chromaticity red, Chromaticity green,
                                    Chromaticity blue);

// The ICC profile of sRGB itself, to be written into a file: the same bytes at any time.
std::vector<std::byte> srgb_profile();

}  // namespace quarterturn
