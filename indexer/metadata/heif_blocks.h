#pragma once
// The metadata of HEIC and AVIF files. libheif finds the blocks wherever the file keeps them
// (ISO/IEC 23008-12, annex A); exiv2 0.27 by itself misses those that other programs have added or
// moved.

#include "indexer/metadata/blocks.h"

namespace quarterturn {

bool is_heif(std::span<const std::byte> bytes);

// Throws Exiv2::Error or std::runtime_error for bytes it cannot read.
MetadataBlocks read_heif_blocks(std::span<const std::byte> bytes);

}  // namespace quarterturn
