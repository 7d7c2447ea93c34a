#include "indexer/image/local_decoder.h"

namespace quarterturn {
namespace {

StoredPicture decode_jpeg_alone(FileKind kind, std::span<const std::byte> bytes, int long_edge) {
    if (kind == FileKind::jpeg) return decode_jpeg(bytes, long_edge);
    throw Refusal("The file is no JPEG. Copy it from the card or phone again.");
}

}  // namespace

std::unique_ptr<Decoder> make_jpeg_decoder() {
    return decoder_by(decode_jpeg_alone);
}

}  // namespace quarterturn
