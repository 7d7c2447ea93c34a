#pragma once
// The smallest RAW file: a TIFF whose one directory holds a sensor's picture and a JPEG preview.

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace quarterturn {

inline std::vector<std::byte> tiny_raw(std::span<const std::byte> jpeg_preview) {
    struct Entry {
        std::uint16_t tag;
        std::uint32_t value;
    };
    // TIFF 6.0; 32803 is the colour filter array of TIFF/EP (ISO 12234-2).
    const std::vector<Entry> entries{{0x0100, 32},
                                     {0x0101, 16},
                                     {0x0106, 32803},
                                     {0x0201, 8 + 2 + 6 * 12 + 4},
                                     {0x0202, static_cast<std::uint32_t>(jpeg_preview.size())},
                                     {0xC612, 0x00000601}};
    std::vector<std::byte> file;
    const auto add = [&](std::uint32_t value, int length) {
        for (int i = 0; i < length; ++i) file.push_back(static_cast<std::byte>(value >> (8 * i)));
    };
    add('I' | 'I' << 8 | 42 << 16, 4);
    add(8, 4);
    add(static_cast<std::uint32_t>(entries.size()), 2);
    for (const auto& entry : entries) {
        const bool version = entry.tag == 0xC612;
        add(entry.tag, 2);
        add(version ? 1 : 4, 2);  // four bytes, or one long
        add(version ? 4 : 1, 4);
        add(entry.value, 4);
    }
    add(0, 4);
    file.insert(file.end(), jpeg_preview.begin(), jpeg_preview.end());
    return file;
}

}  // namespace quarterturn
