// What a file is, by its first bytes. Most RAW files are TIFF files by their first bytes; what
// tells them apart is a picture inside that is laid out as the sensor is, and not as a screen.

#include <algorithm>
#include <array>
#include <string_view>

#include "indexer/image/decode.h"
#include "indexer/image/tiff_layout.h"

namespace quarterturn {
namespace {

using namespace std::string_view_literals;

bool any_of(std::string_view text, std::span<const std::string_view> choices) {
    return std::ranges::find(choices, text) != choices.end();
}

// The brands of an ISO base media file (ISO/IEC 14496-12): the major one, then the compatible ones.
FileKind kind_of_brand(std::string_view brand) {
    // ISO/IEC 23008-12 and the AVIF specification.
    static constexpr std::array picture_brands{"heic"sv, "heix"sv, "heim"sv, "heis"sv,
                                               "hevc"sv, "hevx"sv, "mif1"sv, "msf1"sv,
                                               "avif"sv, "avis"sv, "miaf"sv};
    if (any_of(brand, picture_brands)) return FileKind::heif;
    return brand == "crx "sv ? FileKind::raw : FileKind::video;
}

FileKind kind_of_base_media(std::string_view head) {
    const FileKind kind = kind_of_brand(head.substr(8, 4));
    if (kind != FileKind::video) return kind;
    const auto box_size = static_cast<std::size_t>(static_cast<unsigned char>(head[2])) << 8 |
                          static_cast<unsigned char>(head[3]);
    const std::size_t end = std::min(box_size, head.size());
    for (std::size_t at = 16; at + 4 <= end; at += 4) {
        if (kind_of_brand(head.substr(at, 4)) == FileKind::heif) return FileKind::heif;
    }
    return FileKind::video;
}

bool is_raw_of_its_own(std::string_view head) {
    static constexpr std::array beginnings{
        "FUJIFILMCCD-RAW"sv,      "IIRO"sv,  "IIRS"sv, "MMOR"sv, "IIU\0"sv,
        "II\x1a\0\0\0HEAPCCDR"sv, "\0MRM"sv, "FOVb"sv,
    };
    return std::ranges::any_of(beginnings, [&](auto start) { return head.starts_with(start); });
}

bool is_video(std::string_view head) {
    static constexpr std::array first_boxes{"moov"sv, "mdat"sv, "wide"sv, "pnot"sv};
    static constexpr std::array beginnings{"\x1a\x45\xdf\xa3"sv,  // Matroska, WebM
                                           "\0\0\x01\xba"sv,      // MPEG programme stream
                                           "\0\0\x01\xb3"sv,      // MPEG video
                                           "FLV\x01"sv, "\x30\x26\xb2\x75\x8e\x66\xcf\x11"sv};
    if (head.starts_with("RIFF"sv) && head.substr(8, 4) == "AVI "sv) return true;
    return any_of(head.substr(4, 4), first_boxes) ||
           std::ranges::any_of(beginnings, [&](auto start) { return head.starts_with(start); });
}

}  // namespace

FileKind sniff(std::span<const std::byte> bytes) {
    // Long enough for every beginning, and for all brands that files in the wild carry.
    constexpr std::size_t head_length = 256;
    const std::string_view head(reinterpret_cast<const char*>(bytes.data()),
                                std::min(bytes.size(), head_length));
    constexpr std::size_t least = 12;
    if (head.size() < least) return FileKind::other;
    if (head.starts_with("\xff\xd8\xff"sv)) return FileKind::jpeg;
    if (head.starts_with("\x89PNG\r\n\x1a\n"sv)) return FileKind::png;
    if (head.starts_with("RIFF"sv) && head.substr(8, 4) == "WEBP"sv) return FileKind::webp;
    if (head.substr(4, 4) == "ftyp"sv) return kind_of_base_media(head);
    if (is_raw_of_its_own(head)) return FileKind::raw;
    if (head.starts_with("II*\0"sv) || head.starts_with("MM\0*"sv) || head.starts_with("II+\0"sv) ||
        head.starts_with("MM\0+"sv)) {
        return holds_sensor_data(bytes) ? FileKind::raw : FileKind::tiff;
    }
    return is_video(head) ? FileKind::video : FileKind::other;
}

}  // namespace quarterturn
