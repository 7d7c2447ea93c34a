#pragma once
// How much higher the hair stands in one of two pictures of a head: a hint, measured on the
// outline.

#include <optional>

#include "indexer/image/head_alignment.h"

namespace quarterturn {

struct HairHeight {
    // How much higher in the second than in the first; nothing when it cannot be told.
    std::optional<double> centimetres;
    Spot first_top;   // in heights of the first picture
    Spot second_top;  // laid upon the first
    // How far both heads with their hair reach to the sides, above the chin, in heights of the
    // first picture; equal where it cannot be told.
    double left = 0;
    double right = 0;

    // Of the pairs of unflawed demo photos that show no difference, none is measured to differ by
    // more than 0.6 cm; see tests/accuracy/hair_height_test.cpp. Demo heads rendered with the
    // bun on the crown, 2.3 to 3.6 cm higher, were measured 0.7 cm off at most, from all four
    // sides.
    static constexpr double least_centimetres = 1.0;
    bool differs() const;
};

// From the top of the hair to the chin or nape is taken to be 23 cm; so a centimetre is as far off
// as the head is larger or smaller than that. `first_points`: where the head of the first stands.
// Nothing can be told where no outline stands out, or where it comes to more than a hairdo does.
HairHeight hair_height(const cv::Mat& first, const cv::Mat& second, const HeadAlignment& alignment,
                       const HeadPoints& first_points);

}  // namespace quarterturn
