#pragma once

// From linear light to the pixels of a file, with the mistakes photos have.

#include <cstdint>

#include <opencv2/core.hpp>

namespace quarterturn::demo {

enum class Flaw { none, out_of_focus, moved, too_dark, blown_out };
enum class ColourSpace { srgb, display_p3 };

struct Develop {
    Flaw flaw = Flaw::none;
    ColourSpace colour = ColourSpace::srgb;
    float exposure_ev = 0.0F;
    float softness = 0.0F;  ///< extra blur, pixels at 2000 high
    float warmth = 0.0F;    ///< -1 cool to 1 warm
    float grain = 0.010F;
    std::uint32_t seed = 1;
};

/// Linear CV_32FC3 (red first, sRGB primaries) to CV_8UC3 (blue first).
cv::Mat develop(const cv::Mat& linear, const Develop& how);

}  // namespace quarterturn::demo
