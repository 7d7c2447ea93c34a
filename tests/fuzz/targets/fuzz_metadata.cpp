// What a photo file says of itself, and the picture inside a RAW file.

#include "indexer/image/decode.h"
#include "indexer/metadata/read.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace quarterturn;
    const auto bytes = std::as_bytes(std::span(data, size));
    const FileMetadata metadata = read_metadata(bytes);
    if (metadata.orientation < 1 || metadata.orientation > 8) __builtin_trap();
    if (sniff(bytes) == FileKind::raw) raw_preview(bytes);
    return 0;
}
