#include "indexer/image/local_decoder.h"

namespace quarterturn {
namespace {

StoredPicture decode_heif_alone(FileKind kind, std::span<const std::byte> bytes, int long_edge) {
    if (kind == FileKind::heif) return decode_heif(bytes, long_edge);
    throw Refusal("The file is no HEIC or AVIF. Copy it from the card or phone again.");
}

}  // namespace

std::unique_ptr<Decoder> make_heif_decoder() {
    return decoder_by(decode_heif_alone);
}

}  // namespace quarterturn
