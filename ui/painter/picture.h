#pragma once

#include <QImage>

#include "indexer/sheet/box_picture.h"

namespace quarterturn {

// Of BGR, or BGR and a channel that is passed over. The image shares the matrix's pixels and lives
// no longer than it.
QImage as_image(const cv::Mat& bgr);

}  // namespace quarterturn
