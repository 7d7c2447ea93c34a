#include "indexer/worker/photo_decoder.h"

#include "indexer/metadata/read.h"

namespace quarterturn {

Decoded PhotoDecoder::decode(const DecodeRequest& request) {
    if (sniff(request.bytes) != FileKind::raw) return pictures_.decode(request);
    const std::vector<std::byte> preview = raw_preview(request.bytes);
    if (preview.empty()) return pictures_.decode(request);
    DecodeRequest for_preview = request;
    for_preview.bytes = preview;
    return pictures_.decode(for_preview);
}

}  // namespace quarterturn
