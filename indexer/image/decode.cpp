#include "indexer/image/decode.h"

#include "indexer/image/codec.h"
#include "indexer/image/profile.h"
#include "indexer/image/upright.h"

namespace quarterturn {
namespace {

StoredPicture decode_stored(FileKind kind, std::span<const std::byte> bytes, int long_edge) {
    switch (kind) {
        case FileKind::jpeg:
            return decode_jpeg(bytes, long_edge);
        case FileKind::heif:
            return decode_heif(bytes, long_edge);
        case FileKind::png:
            return decode_png(bytes, long_edge);
        case FileKind::tiff:
            return decode_tiff(bytes, long_edge);
        case FileKind::webp:
            return decode_webp(bytes, long_edge);
        case FileKind::raw:
            throw Refusal(
                "The RAW file holds no preview that can be opened. Save it as a JPEG and bring "
                "that "
                "in.");
        case FileKind::video:
            throw Refusal("The file is a video, and only photos are brought in.");
        case FileKind::other:
            break;
    }
    if (bytes.empty()) throw Refusal("The file is empty. Copy it from the card or phone again.");
    throw Refusal(
        "The file is not a photo of a kind that is opened here (JPEG, HEIC, AVIF, PNG, TIFF, WebP, "
        "RAW), or its beginning is damaged. Copy it again, or save it as a JPEG and bring that "
        "in.");
}

Decoded decode_upright(const DecodeRequest& request) {
    const FileKind kind = sniff(request.bytes);
    const StoredPicture stored = decode_stored(kind, request.bytes, request.long_edge);
    Decoded decoded;
    decoded.orientation_applied =
        kind == FileKind::heif ? 1 : known_orientation(request.orientation);
    decoded.full_width = stored.full_width;
    decoded.full_height = stored.full_height;
    if (turns_sideways(decoded.orientation_applied)) {
        std::swap(decoded.full_width, decoded.full_height);
    }
    decoded.bgr = upright(to_srgb(stored.pixels, stored.icc), decoded.orientation_applied);
    return decoded;
}

Decoded refusal(std::string sentence) {
    Decoded decoded;
    decoded.refused = std::move(sentence);
    return decoded;
}

class LocalDecoder : public Decoder {
  public:
    Decoded decode(const DecodeRequest& request) override {
        try {
            return decode_upright(request);
        } catch (const Refusal& reason) {
            return refusal(reason.what());
        } catch (const std::bad_alloc&) {
            return refusal(
                "The picture needs more memory than this computer has free. Close other programs, "
                "or "
                "save a smaller copy and bring that in.");
        } catch (const std::exception&) {
            return refusal(is_damaged().what());
        }
    }
};

}  // namespace

std::unique_ptr<Decoder> make_local_decoder() {
    return std::make_unique<LocalDecoder>();
}

}  // namespace quarterturn
