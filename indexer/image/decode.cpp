#include "indexer/image/decode.h"

#include "indexer/image/local_decoder.h"

namespace quarterturn {
namespace {

StoredPicture decode_stored(FileKind kind, std::span<const std::byte> bytes, int long_edge) {
    return kind == FileKind::heif ? decode_heif(bytes, long_edge)
                                  : decode_all_but_heif(kind, bytes, long_edge);
}

}  // namespace

std::unique_ptr<Decoder> make_local_decoder() {
    return decoder_by(decode_stored);
}

}  // namespace quarterturn
