#pragma once
// From a file's bytes to a picture: upright, in sRGB, no larger than asked for.
//
// Bytes come from strangers' cameras and may be hostile, so decoding stands behind an interface of
// plain values that a worker process takes over (indexer/worker). A picture that cannot be decoded
// is a result with a sentence, not an exception.

#include <cstddef>
#include <memory>
#include <opencv2/core.hpp>
#include <span>
#include <string>

namespace quarterturn {

struct DecodeRequest {
    std::span<const std::byte> bytes;
    // EXIF orientation 1 … 8 to apply. Ignored for HEIF (HEIC, AVIF), whose own properties the
    // decoder has applied already (ISO/IEC 23008-12).
    int orientation = 1;
    // The result's long edge is at least this many pixels unless the picture itself is smaller,
    // and less than twice as many where the format lets the decoder shrink. 0: full size.
    int long_edge = 0;
};

struct Decoded {
    cv::Mat bgr;         // CV_8UC3, sRGB, upright; empty when refused
    int full_width = 0;  // of the whole picture, seen upright
    int full_height = 0;
    int orientation_applied = 1;  // what was applied from the request; 1 for HEIF
    std::string refused;          // why there is no picture, in plain words without the file's name

    bool nothing_opens = false;  // refused as every picture would be, whatever it is

    bool ok() const { return refused.empty(); }
};

class Decoder {
  public:
    virtual ~Decoder() = default;
    // Does not throw for bad bytes.
    virtual Decoded decode(const DecodeRequest& request) = 0;
};

// Decodes in this process. Safe to use from several threads at once.
std::unique_ptr<Decoder> make_local_decoder();

// The same for some kinds, without the libraries of the others, which are refused.
std::unique_ptr<Decoder> make_jpeg_decoder();
std::unique_ptr<Decoder> make_heif_decoder();
std::unique_ptr<Decoder> make_decoder_of_all_but_heif();

// Has libheif read the files of its own that it needs. Decoding reads them otherwise.
void set_up_heif();

// What kind of file the first bytes say it is, whatever its name.
enum class FileKind { jpeg, heif, png, tiff, webp, raw, video, other };
FileKind sniff(std::span<const std::byte> bytes);

}  // namespace quarterturn
