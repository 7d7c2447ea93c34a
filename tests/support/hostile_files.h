#pragma once
// Small files that mean harm: they claim or unfold to far more than they are, or lead in circles.

#include <zlib.h>

#include <cstddef>
#include <cstdint>
#include <span>
#include <stdexcept>
#include <string>
#include <vector>

#include "tests/support/heif_writer.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {

using HostileBytes = std::vector<std::byte>;

struct HostileFile {
    std::string name;
    HostileBytes bytes;
};

namespace hostile_detail {

inline void add(HostileBytes& to, std::string_view text) {
    const auto bytes = std::as_bytes(std::span(text));
    to.insert(to.end(), bytes.begin(), bytes.end());
}

inline void add_big_endian(HostileBytes& to, std::uint32_t value) {
    for (int shift = 24; shift >= 0; shift -= 8)
        to.push_back(static_cast<std::byte>(value >> shift));
}

inline void add_little_endian(HostileBytes& to, std::uint32_t value, int bytes) {
    for (int i = 0; i < bytes; ++i) to.push_back(static_cast<std::byte>(value >> (8 * i)));
}

// PNG 1.2, 5.3: length, type, data, and a CRC over type and data.
inline void add_chunk(HostileBytes& png, const std::string& type, const HostileBytes& data) {
    HostileBytes checked;
    add(checked, type);
    checked.insert(checked.end(), data.begin(), data.end());
    add_big_endian(png, static_cast<std::uint32_t>(data.size()));
    png.insert(png.end(), checked.begin(), checked.end());
    add_big_endian(
        png, static_cast<std::uint32_t>(::crc32(0, reinterpret_cast<const Bytef*>(checked.data()),
                                                static_cast<uInt>(checked.size()))));
}

inline HostileBytes deflated_zeros(std::size_t count) {
    z_stream stream{};
    if (::deflateInit(&stream, Z_BEST_SPEED) != Z_OK) throw std::runtime_error("deflateInit");
    const std::vector<Bytef> zeros(1 << 20);
    std::vector<Bytef> out(1 << 20);
    HostileBytes deflated;
    for (std::size_t left = count; left > 0;) {
        const std::size_t part = std::min(left, zeros.size());
        left -= part;
        stream.next_in = const_cast<Bytef*>(zeros.data());
        stream.avail_in = static_cast<uInt>(part);
        do {
            stream.next_out = out.data();
            stream.avail_out = static_cast<uInt>(out.size());
            ::deflate(&stream, left == 0 ? Z_FINISH : Z_NO_FLUSH);
            const std::size_t made = out.size() - stream.avail_out;
            const auto bytes = std::as_bytes(std::span(out)).first(made);
            deflated.insert(deflated.end(), bytes.begin(), bytes.end());
        } while (stream.avail_out == 0);
    }
    ::deflateEnd(&stream);
    return deflated;
}

// A TIFF of one directory with these entries: tag, type, count, value (TIFF 6.0, section 2).
struct TiffEntry {
    std::uint32_t tag, type, count, value;
};

inline HostileBytes tiff_of(const std::vector<TiffEntry>& entries, std::uint32_t next) {
    HostileBytes file;
    add(file, std::string_view("II*\0\x08\0\0\0", 8));
    add_little_endian(file, static_cast<std::uint32_t>(entries.size()), 2);
    for (const auto& [tag, type, count, value] : entries) {
        add_little_endian(file, tag, 2);
        add_little_endian(file, type, 2);
        add_little_endian(file, count, 4);
        add_little_endian(file, value, 4);
    }
    add_little_endian(file, next, 4);
    return file;
}

inline HostileBytes replaced(HostileBytes bytes, const std::string& found, std::size_t after,
                             const HostileBytes& by) {
    const std::string_view all(reinterpret_cast<const char*>(bytes.data()), bytes.size());
    const std::size_t at = all.find(found);
    if (at == std::string::npos) throw std::runtime_error(found + " is not in the file");
    std::copy(by.begin(), by.end(), bytes.begin() + static_cast<std::ptrdiff_t>(at + after));
    return bytes;
}

}  // namespace hostile_detail

// Grey of one bit: a file of some kilobytes for gigabytes of pixels.
inline HostileBytes png_claiming(std::uint32_t width, std::uint32_t height, std::size_t data) {
    using namespace hostile_detail;
    HostileBytes header;
    add_big_endian(header, width);
    add_big_endian(header, height);
    add(header, std::string_view("\x01\0\0\0\0", 5));
    HostileBytes png;
    add(png, "\x89PNG\r\n\x1a\n");
    add_chunk(png, "IHDR", header);
    add_chunk(png, "IDAT", deflated_zeros(data));
    add_chunk(png, "IEND", {});
    return png;
}

// A profile or text that unfolds to so many bytes.
inline HostileBytes png_with_chunk_bomb(const std::string& type, std::size_t unfolded) {
    using namespace hostile_detail;
    HostileBytes chunk;
    add(chunk, std::string_view("x\0\0", 3));
    const HostileBytes zeros = deflated_zeros(unfolded);
    chunk.insert(chunk.end(), zeros.begin(), zeros.end());
    HostileBytes bomb;
    add_chunk(bomb, type, chunk);
    HostileBytes png = encoded(four_quarters(16, 16), ".png");
    constexpr std::ptrdiff_t after_header = 8 + 25;
    png.insert(png.begin() + after_header, bomb.begin(), bomb.end());
    return png;
}

inline HostileBytes nested_boxes(const std::string& brand, const std::string& type, int depth) {
    using namespace hostile_detail;
    HostileBytes file;
    add_big_endian(file, 20);
    add(file, "ftyp" + brand);
    add_big_endian(file, 0);
    add(file, brand);
    constexpr std::uint32_t head = 12;
    for (int i = 0; i < depth; ++i) {
        add_big_endian(file, static_cast<std::uint32_t>(depth - i) * head);
        add(file, type);
        add_big_endian(file, 0);
    }
    return file;
}

// A picture that is made of itself, by an item of the type 'iden' (ISO/IEC 23008-12, 6.6.2.1), on
// which libheif 1.15 runs out of stack.
inline HostileBytes heic_of_itself() {
    const auto box = [](const std::string& type, const std::string& content) {
        HostileBytes head;
        hostile_detail::add_big_endian(head, static_cast<std::uint32_t>(8 + content.size()));
        return std::string(reinterpret_cast<const char*>(head.data()), 4) + type + content;
    };
    const auto nothing = [](int bytes) {
        return std::string(static_cast<std::size_t>(bytes), '\0');
    };
    const std::string one("\0\1", 2);
    const std::string item =
        box("infe", "\2" + nothing(3) + one + nothing(2) + "iden" + nothing(1));
    const std::string meta =
        nothing(4) + box("hdlr", nothing(8) + "pict" + nothing(13)) +
        box("pitm", nothing(4) + one) + box("iinf", nothing(4) + one + item) +
        box("iref", nothing(4) + box("dimg", one + one + one)) +
        box("iprp", box("ipco", box("ispe", nothing(7) + '\x40' + nothing(3) + '\x40')) +
                        box("ipma", nothing(7) + '\1' + one + "\1\x81")) +
        box("idat", "") +
        box("iloc", "\1" + nothing(3) + "\x44" + nothing(1) + one + one + one + nothing(2) + one +
                        nothing(8));
    HostileBytes file;
    hostile_detail::add(file, box("ftyp", "heic" + nothing(4) + "mif1heic") + box("meta", meta));
    return file;
}

inline std::vector<HostileFile> hostile_files() {
    using namespace hostile_detail;
    HostileBytes huge;
    add_big_endian(huge, 0x7FFFFFFF);
    add_big_endian(huge, 0x7FFFFFFF);
    const HostileBytes heic = heic_of(four_quarters(96, 64));
    HostileBytes webp = encoded(four_quarters(96, 64), ".webp");
    const auto strips = [](std::uint32_t width, std::uint32_t height, std::uint32_t compression) {
        return tiff_of({{0x0100, 4, 1, width},
                        {0x0101, 4, 1, height},
                        {0x0102, 3, 1, 8},
                        {0x0103, 3, 1, compression},
                        {0x0106, 3, 1, 1},
                        {0x0111, 4, 1, 8},
                        {0x0115, 3, 1, 1},
                        {0x0116, 4, 1, height},
                        {0x0117, 4, 1, 64}},
                       0);
    };
    return {
        {"claims 2 thousand million pixels.png", png_claiming(50'000, 50'000, 1 << 16)},
        {"claims no end of pixels.png", png_claiming(0x7FFFFFFF, 0x7FFFFFFF, 1 << 10)},
        {"claims more than it holds.png", png_claiming(15'000, 16'000, 1 << 16)},
        {"unfolds to 250 megapixels.png",
         png_claiming(15'000, 16'000, std::size_t{16'000} * (15'000 / 8 + 1))},
        {"profile of half a gigabyte.png", png_with_chunk_bomb("iCCP", std::size_t{512} << 20)},
        {"long text.png", png_with_chunk_bomb("zTXt", std::size_t{64} << 20)},
        {"endless.tif", strips(0xFFFFFFFF, 0xFFFFFFFF, 1)},
        {"wide.tif", strips(250'000'000, 1, 5)},
        {"deflated.tif", strips(15'000, 16'000, 8)},
        {"next directory is the first.tif",
         tiff_of({{0x0100, 4, 1, 16}, {0x0101, 4, 1, 16}, {0x014A, 4, 1, 8}, {0x8769, 4, 1, 8}},
                 8)},
        {"a million values.tif",
         tiff_of({{0x0111, 4, 0xFFFFFFF, 8}, {0x9286, 7, 0xFFFFFFFF, 8}}, 0)},
        {"sensor in circles.dng",
         tiff_of({{0x0106, 3, 1, 32803}, {0x014A, 4, 1, 8}, {0x8769, 4, 1, 8}, {0x8825, 4, 1, 8}},
                 8)},
        {"huge.heic", replaced(heic, "ispe", 8, huge)},
        {"made of itself.heic", heic_of_itself()},
        {"nested.heic", nested_boxes("heic", "meta", 100'000)},
        {"nested parts.heic", nested_boxes("heic", "iprp", 100'000)},
        {"nested.cr3", nested_boxes("crx ", "moov", 100'000)},
        {"nested.avif", nested_boxes("avif", "meta", 100'000)},
        {"no end.webp", replaced(webp, "VP8L", 9, HostileBytes(4, std::byte{0xFF}))},
    };
}

}  // namespace quarterturn
