#pragma once

#include <opencv2/core.hpp>

#include "indexer/disk/file_system.h"
#include "indexer/image/decode.h"
#include "indexer/sheet/page.h"

namespace quarterturn {

// The page at print_dpi, CV_8UC3 in BGR, sRGB. A QGuiApplication must exist. Throws
// std::runtime_error with a sentence when a photo of it cannot be shown.
cv::Mat page_pixels(const Page& page, Decoder& decoder, FileSystem& disk);

}  // namespace quarterturn
