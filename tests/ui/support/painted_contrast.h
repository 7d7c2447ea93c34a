#pragma once

#include <QImage>
#include <QRect>

namespace quarterturn {

// The contrast (WCAG 2.2, 1 … 21) between the ground of an area of a picture, which is its most
// frequent colour, and the ink on it, which is the colour farthest from the ground that covers at
// least a few pixels. `area` is in device-independent pixels. Written on its own, without the
// theme's functions, so that one checks the other.
double painted_contrast(const QImage& picture, const QRect& area);

}  // namespace quarterturn
