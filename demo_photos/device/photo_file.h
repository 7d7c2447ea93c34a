#pragma once

// Writing a picture the way a phone or a camera would.
//
// The pixels given are upright. With an EXIF orientation other than 1 they are
// stored turned, so that a viewer that honours the tag sees them upright again
// (EXIF 2.32, tag 0x0112). A HEIC turns with its own `irot` property instead
// (ISO/IEC 23008-12); the EXIF value beside it is then information only.

#include <filesystem>
#include <optional>
#include <string>

#include <opencv2/core.hpp>

namespace quarterturn::demo {

struct Place {
    double latitude = 0.0;   ///< degrees, north positive
    double longitude = 0.0;  ///< degrees, east positive
};

/// What the device writes about the photo.
struct PhotoFacts {
    std::string make;
    std::string model;
    std::string serial;
    std::string lens;
    std::string taken;       ///< "YYYY:MM:DD HH:MM:SS", the device's own clock
    std::string subseconds;  ///< decimal digits after the second
    std::string offset;      ///< "+01:00", empty if the device does not know it
    int orientation = 1;
    double focal_mm = 0.0;
    int focal_35mm = 0;
    double aperture = 0.0;
    int exposure_denominator = 100;  ///< 1/n of a second
    int iso = 100;
    std::optional<Place> place;
    std::string keyword;  ///< written as dc:subject and IPTC keyword, empty for none
    bool display_p3 = false;
};

/// Pixels as the file stores them for this orientation.
cv::Mat stored_for(const cv::Mat& upright, int orientation);

/// Throws std::runtime_error naming the file when it cannot be written.
void write_jpeg(const std::filesystem::path& file, const cv::Mat& upright, const PhotoFacts& facts,
                int most_bytes);

/// `turned_in_file` stores the pixels turned for the orientation with an irot
/// property; otherwise they are stored upright and EXIF says 1.
void write_heic(const std::filesystem::path& file, const cv::Mat& upright, const PhotoFacts& facts,
                bool turned_in_file, int most_bytes);

/// An ICC profile for Display P3: P3 primaries, D65 white, the sRGB curve.
std::string display_p3_profile();

}  // namespace quarterturn::demo
