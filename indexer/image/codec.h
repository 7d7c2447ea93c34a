#pragma once
// One function for each kind of picture file. All of them answer the picture as it is stored and
// leave turning and colour to decode.cpp, so that there is one place for each.

#include <cstddef>
#include <opencv2/core.hpp>
#include <span>
#include <stdexcept>
#include <string>
#include <vector>

#include "indexer/image/decode.h"

namespace quarterturn {

struct StoredPicture {
    // 8 bits a channel: grey, BGR, or CMYK (255 is full ink); already shrunk, not turned.
    cv::Mat pixels;
    int full_width = 0;  // before shrinking
    int full_height = 0;
    std::vector<std::byte> icc;  // the file's colour profile; empty when it has none
};

// Why there is no picture: a sentence, and what to do next.
class Refusal : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

Refusal ends_too_early();
Refusal is_damaged();

// No larger picture is opened: a hostile file of a few bytes can claim any size, and no camera a
// stylist carries takes such a picture.
inline constexpr std::int64_t most_pixels = 250'000'000;

// Throws Refusal for a picture of no size, or of more than most_pixels.
void check_size(std::int64_t width, std::int64_t height);

// 1, 2, 4 or 8: the largest of them that leaves the long edge at `long_edge` pixels or more; 1 when
// `long_edge` is 0.
int shrink_factor(int width, int height, int long_edge);

// The pixels shrunk by that factor, each the mean of those it stands for.
cv::Mat shrunk(const cv::Mat& pixels, int long_edge);

// BGR from BGRA, as if the picture lay on white paper.
cv::Mat on_white(const cv::Mat& bgra);

// All throw Refusal for bytes that hold no whole picture, and std::bad_alloc.
StoredPicture decode_jpeg(std::span<const std::byte> bytes, int long_edge);
StoredPicture decode_png(std::span<const std::byte> bytes, int long_edge);
StoredPicture decode_tiff(std::span<const std::byte> bytes, int long_edge);
StoredPicture decode_webp(std::span<const std::byte> bytes, int long_edge);
// The file's own rotation and mirroring are applied (ISO/IEC 23008-12).
StoredPicture decode_heif(std::span<const std::byte> bytes, int long_edge);
// Any of those but HEIF. Throws Refusal for what is no photo as well.
StoredPicture decode_all_but_heif(FileKind kind, std::span<const std::byte> bytes, int long_edge);

}  // namespace quarterturn
