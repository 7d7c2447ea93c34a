#pragma once

#include <string_view>

#include "indexer/disk/file_system.h"

namespace quarterturn {

// Where the small picture of a photo lies in the cache of a library, whether it is there or not: a
// JPEG in sRGB, upright, 512 pixels on its long edge at most.
Path small_picture_file(const Path& library_folder, std::string_view sha256);

}  // namespace quarterturn
