#include "indexer/image/local_decoder.h"

namespace quarterturn {

StoredPicture decode_all_but_heif(FileKind kind, std::span<const std::byte> bytes, int long_edge) {
    switch (kind) {
        case FileKind::jpeg:
            return decode_jpeg(bytes, long_edge);
        case FileKind::png:
            return decode_png(bytes, long_edge);
        case FileKind::tiff:
            return decode_tiff(bytes, long_edge);
        case FileKind::webp:
            return decode_webp(bytes, long_edge);
        case FileKind::raw:
            throw Refusal(
                "The RAW file holds no preview that can be opened. Save it as a JPEG and bring "
                "that in.");
        case FileKind::video:
            throw Refusal("The file is a video, and only photos are brought in.");
        case FileKind::heif:
            throw Refusal("The file is a HEIC or AVIF. Copy it from the card or phone again.");
        case FileKind::other:
            break;
    }
    if (bytes.empty()) throw Refusal("The file is empty. Copy it from the card or phone again.");
    throw Refusal(
        "The file is not a photo of a kind that is opened here (JPEG, HEIC, AVIF, PNG, TIFF, WebP, "
        "RAW), or its beginning is damaged. Copy it again, or save it as a JPEG and bring that "
        "in.");
}

std::unique_ptr<Decoder> make_decoder_of_all_but_heif() {
    return decoder_by(decode_all_but_heif);
}

}  // namespace quarterturn
