#include "indexer/metadata/blocks.h"

#include "indexer/metadata/heif_blocks.h"

namespace quarterturn {

MetadataBlocks read_blocks(std::span<const std::byte> bytes) {
    if (is_heif(bytes)) return read_heif_blocks(bytes);
    const auto image = open_image(bytes);
    return {image->exifData(), image->iptcData(), image->xmpData(),
            std::max(image->pixelWidth(), 0), std::max(image->pixelHeight(), 0)};
}

}  // namespace quarterturn
