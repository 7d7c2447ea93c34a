#pragma once

#include "demo_photos/device/photo_file.h"

#include <exiv2/exiv2.hpp>

namespace quarterturn::demo {

Exiv2::ExifData exif_of(const PhotoFacts& facts, cv::Size stored);

}  // namespace quarterturn::demo
