#pragma once
// exiv2 keeps state for the whole process; it is set up once, before its first use from any thread.

#include <cstddef>
#include <exiv2/exiv2.hpp>
#include <memory>
#include <span>

namespace quarterturn {

// Opens the bytes, which must outlive the image, and reads all their metadata.
// Throws Exiv2::Error, std::bad_alloc or another std::exception for bytes it cannot read.
std::unique_ptr<Exiv2::Image> open_image(std::span<const std::byte> bytes);

}  // namespace quarterturn
