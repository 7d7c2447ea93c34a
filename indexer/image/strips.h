#pragma once
// A large picture as a file, from strips of its rows that are encoded each for itself, so that
// several threads share the work. What comes out is one picture like any other.

#include <cstddef>
#include <cstdint>
#include <opencv2/core.hpp>
#include <span>
#include <vector>

namespace quarterturn {

// All strips but the last have so many rows: few enough that those of an A4 page at 300 dots per
// inch stay near the processor, and that the page's white has strips of its own.
inline constexpr int strip_rows = 128;

struct PictureTag {
    int dpi = 0;
    std::span<const std::byte> icc;
};

// Strips are CV_8UC4: BGR and a channel that is passed over. Safe to use from several threads.
std::vector<std::byte> jpeg_strip(const cv::Mat& bgrx, int quality, const PictureTag& tag);
std::vector<std::byte> jpeg_of(std::span<const std::vector<std::byte>> strips, int height);

struct PngStrip {
    std::vector<std::byte> deflated;
    std::uint32_t checksum = 0;  // Adler-32, and of how many bytes
    std::size_t length = 0;
};
PngStrip png_strip(const cv::Mat& bgrx, bool last);
std::vector<std::byte> png_of(std::span<const PngStrip> strips, cv::Size size,
                              const PictureTag& tag);

}  // namespace quarterturn
