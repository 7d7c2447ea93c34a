#pragma once
// The directories of a TIFF file (TIFF 6.0, section 2), read no further than to tell RAW apart.

#include <cstddef>
#include <span>

namespace quarterturn {

// Whether a directory of the file, or one below it, holds a picture as the sensor gave it: by its
// PhotometricInterpretation (TIFF/EP, DNG 1.6), or a DNGVersion. Does not throw for bad bytes.
bool holds_sensor_data(std::span<const std::byte> tiff);

}  // namespace quarterturn
