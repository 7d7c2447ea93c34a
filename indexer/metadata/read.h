#pragma once
// What a photo file says of itself (exiv2).

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/record/time.h"

namespace quarterturn {

struct FileMetadata {
    // DateTimeOriginal, else CreateDate; nothing when blank, zeros, or no real date.
    std::optional<CaptureTime> taken;
    std::string make;
    std::string model;
    std::string serial;
    int orientation = 1;  // EXIF 0x0112; 1 when absent or out of range
    int width = 0;        // as stored, not turned; 0 when the file does not say
    int height = 0;
    std::vector<std::string> keywords;  // XMP dc:subject and IPTC keywords
    std::string unreadable;  // a sentence when the metadata is damaged; the rest is empty
};

// Has the libraries read the files of their own that they need. Reading does otherwise.
void set_up_metadata();

// Does not throw for bad bytes. Safe to use from several threads at once.
FileMetadata read_metadata(std::span<const std::byte> bytes);

// The largest picture embedded in a RAW file; empty when there is none.
std::vector<std::byte> raw_preview(std::span<const std::byte> bytes);

}  // namespace quarterturn
