#pragma once
// The blocks of metadata that photo files carry, of whatever kind the file is.

#include <cstddef>
#include <exiv2/exiv2.hpp>
#include <memory>
#include <span>

namespace quarterturn {

struct MetadataBlocks {
    Exiv2::ExifData exif;
    Exiv2::IptcData iptc;
    Exiv2::XmpData xmp;
    int width = 0;  // as stored, not turned; 0 when the file does not say
    int height = 0;
};

// Throws Exiv2::Error, std::bad_alloc or another std::exception for bytes it cannot read.
MetadataBlocks read_blocks(std::span<const std::byte> bytes);

// With its metadata read. The bytes must outlive the image. Throws as above.
std::unique_ptr<Exiv2::Image> open_image(std::span<const std::byte> bytes);

// exiv2 keeps state for the whole process; this sets it up once. Called before any use of it.
void set_up_exiv2();

}  // namespace quarterturn
