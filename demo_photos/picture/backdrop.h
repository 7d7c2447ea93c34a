#pragma once

#include "demo_photos/picture/canvas.h"

namespace quarterturn::demo {

/// The room behind the head, far out of focus.
struct Backdrop {
    Vec3 wall{0.46F, 0.43F, 0.40F};
    Vec3 floor{0.30F, 0.23F, 0.17F};
    Vec3 window{1.25F, 1.28F, 1.32F};
    float window_at = -0.9F;  ///< where the window glows, -1 left edge to 1 right edge
    std::uint32_t seed = 1;
};

/// Linear CV_32FC3, red first.
cv::Mat paint_backdrop(const Backdrop& backdrop, const View& view, int width, int height);

}  // namespace quarterturn::demo
