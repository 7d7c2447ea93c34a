#include "indexer/metadata/heif_blocks.h"

#include <libheif/heif.h>

#include <stdexcept>
#include <string>
#include <vector>

namespace quarterturn {
namespace {

using Context = std::unique_ptr<heif_context, decltype(&heif_context_free)>;
using Handle = std::unique_ptr<const heif_image_handle, decltype(&heif_image_handle_release)>;

void require_ok(const heif_error& error) {
    if (error.code != heif_error_Ok) throw std::runtime_error(error.message);
}

Context open_context(std::span<const std::byte> bytes) {
    Context context(heif_context_alloc(), &heif_context_free);
    if (!context) throw std::bad_alloc();
    require_ok(heif_context_read_from_memory_without_copy(context.get(), bytes.data(), bytes.size(),
                                                          nullptr));
    return context;
}

Handle primary_image(heif_context* context) {
    heif_image_handle* handle = nullptr;
    require_ok(heif_context_get_primary_image_handle(context, &handle));
    return {handle, &heif_image_handle_release};
}

std::vector<heif_item_id> block_ids(const heif_image_handle* image) {
    std::vector<heif_item_id> ids(
        static_cast<std::size_t>(heif_image_handle_get_number_of_metadata_blocks(image, nullptr)));
    const int found = heif_image_handle_get_list_of_metadata_block_IDs(
        image, nullptr, ids.data(), static_cast<int>(ids.size()));
    ids.resize(static_cast<std::size_t>(found));
    return ids;
}

std::vector<Exiv2::byte> block_bytes(const heif_image_handle* image, heif_item_id id) {
    std::vector<Exiv2::byte> bytes(heif_image_handle_get_metadata_size(image, id));
    if (!bytes.empty()) require_ok(heif_image_handle_get_metadata(image, id, bytes.data()));
    return bytes;
}

// The block begins with four bytes that say how far on the TIFF header is.
void decode_exif(const std::vector<Exiv2::byte>& block, Exiv2::ExifData& exif) {
    constexpr std::size_t length_of_offset = 4;
    if (block.size() < length_of_offset) return;
    const std::size_t start = length_of_offset + Exiv2::getULong(block.data(), Exiv2::bigEndian);
    if (start >= block.size()) throw std::runtime_error("the Exif block points beyond its end");
    Exiv2::ExifParser::decode(exif, block.data() + start,
                              static_cast<std::uint32_t>(block.size() - start));
}

void decode_block(const heif_image_handle* image, heif_item_id id, MetadataBlocks& blocks) {
    const std::string type = heif_image_handle_get_metadata_type(image, id);
    const auto block = block_bytes(image, id);
    if (type == "Exif") decode_exif(block, blocks.exif);
    const char* content = heif_image_handle_get_metadata_content_type(image, id);
    if (type == "mime" && content != nullptr && std::string(content) == "application/rdf+xml") {
        Exiv2::XmpParser::decode(blocks.xmp, std::string(block.begin(), block.end()));
    }
}

}  // namespace

bool is_heif(std::span<const std::byte> bytes) {
    constexpr std::size_t head_length = 64;
    const auto head = bytes.first(std::min(bytes.size(), head_length));
    const auto answer = heif_check_filetype(reinterpret_cast<const std::uint8_t*>(head.data()),
                                            static_cast<int>(head.size()));
    return answer == heif_filetype_yes_supported || answer == heif_filetype_yes_unsupported;
}

MetadataBlocks read_heif_blocks(std::span<const std::byte> bytes) {
    set_up_exiv2();
    const Context context = open_context(bytes);
    const Handle image = primary_image(context.get());
    MetadataBlocks blocks;
    blocks.width = heif_image_handle_get_ispe_width(image.get());
    blocks.height = heif_image_handle_get_ispe_height(image.get());
    for (const heif_item_id id : block_ids(image.get())) decode_block(image.get(), id, blocks);
    return blocks;
}

}  // namespace quarterturn
