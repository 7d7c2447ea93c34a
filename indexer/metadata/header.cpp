#include "indexer/metadata/header.h"

namespace quarterturn {
namespace {

// The second bytes of markers; the first is 0xFF.
constexpr std::byte start_of_image{0xD8};
constexpr std::byte start_of_scan{0xDA};
constexpr std::byte fill{0xFF};

// Those of markers that no length follows: TEM, RSTn, SOI, EOI.
bool stands_alone(std::byte marker) {
    const auto code = std::to_integer<int>(marker);
    return code == 0x01 || (code >= 0xD0 && code <= 0xD9);
}

std::size_t length_at(std::span<const std::byte> bytes, std::size_t at) {
    return std::to_integer<std::size_t>(bytes[at]) << 8 |
           std::to_integer<std::size_t>(bytes[at + 1]);
}

}  // namespace

std::optional<std::size_t> jpeg_header_bytes(std::span<const std::byte> front) {
    if (front.size() < 2 || front[0] != fill || front[1] != start_of_image) return std::nullopt;
    for (std::size_t at = 2; at + 4 <= front.size();) {
        if (front[at] != fill) return std::nullopt;
        const std::byte marker = front[at + 1];
        if (marker == fill) {
            ++at;
            continue;
        }
        if (stands_alone(marker)) return std::nullopt;
        const std::size_t end = at + 2 + length_at(front, at + 2);
        if (end > front.size()) return std::nullopt;
        if (marker == start_of_scan) return end;
        at = end;
    }
    return std::nullopt;
}

std::span<const std::byte> metadata_part(std::span<const std::byte> file) {
    return file.first(jpeg_header_bytes(file).value_or(file.size()));
}

}  // namespace quarterturn
