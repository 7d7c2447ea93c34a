#include "indexer/metadata/header.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>

#include "indexer/metadata/read.h"
#include "tests/support/files.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

using Blob = std::vector<std::byte>;

void append(Blob& blob, std::span<const std::byte> more) {
    blob.insert(blob.end(), more.begin(), more.end());
}

Blob segment(std::uint8_t marker, std::span<const std::byte> content) {
    const auto length = static_cast<std::uint16_t>(content.size() + 2);
    Blob bytes{std::byte{0xFF}, std::byte{marker}, static_cast<std::byte>(length >> 8),
               static_cast<std::byte>(length & 0xFF)};
    append(bytes, content);
    return bytes;
}

// EXIF 2.32: APP1, "Exif", a TIFF header and IFD0 with the model alone, sixteen bytes long.
Blob exif_with_model(const std::string& model) {
    std::string tiff("MM\0*\0\0\0\x08\0\x01\x01\x10\0\x02\0\0\0\x10\0\0\0\x1A\0\0\0\0", 26);
    tiff += model;
    tiff.resize(26 + 16, '\0');
    const std::string content = std::string("Exif\0\0", 6) + tiff;
    return segment(0xE1, std::as_bytes(std::span(content)));
}

TEST(JpegHeader, EndsWhereThePictureBegins) {
    EXPECT_EQ(jpeg_header_bytes({}), std::nullopt);
    EXPECT_EQ(jpeg_header_bytes(encoded(four_quarters(40, 30), ".png")), std::nullopt);
    const Blob cut{std::byte{0xFF}, std::byte{0xD8}, std::byte{0xFF}, std::byte{0xFF},
                   std::byte{0xD9}, std::byte{0},    std::byte{0}};
    EXPECT_EQ(jpeg_header_bytes(cut), std::nullopt);
}

// The whole file is the oracle, and where the parts were put together.
RC_GTEST_PROP(JpegHeader, SaysWhatTheWholeFileSays, ()) {
    const Blob jpeg = encoded(four_quarters(64, 48), ".jpg");
    const std::string model = *rc::gen::container<std::string>(15, rc::gen::inRange('a', 'z'));
    Blob whole(jpeg.begin(), jpeg.begin() + 2);
    const int before = *rc::gen::inRange(0, 4);
    for (int i = 0; i < before; ++i) {
        const Blob filling(*rc::gen::inRange<std::size_t>(0, 60'000), std::byte{0xDA});
        append(whole, segment(*rc::gen::element<std::uint8_t>(0xE5, 0xEC, 0xFE), filling));
    }
    append(whole, exif_with_model(model));
    const std::size_t moved = whole.size() - 2;
    append(whole, std::span(jpeg).subspan(2));
    const auto header = jpeg_header_bytes(whole);
    RC_ASSERT(header.has_value());
    RC_ASSERT(*header == *jpeg_header_bytes(jpeg) + moved);
    RC_ASSERT(jpeg_header_bytes(std::span(whole).first(*header)) == header);
    RC_ASSERT(!jpeg_header_bytes(std::span(whole).first(*header - 1)));
    const FileMetadata says = read_metadata(metadata_part(whole));
    const FileMetadata all = read_metadata(whole);
    RC_ASSERT(says.model == model);
    RC_ASSERT(all.model == model);
    RC_ASSERT(says.unreadable == all.unreadable);
    RC_ASSERT(says.width == 64 && all.width == 64);
}

TEST(JpegHeader, SaysOfRealPhotosWhatTheWholeFileSays) {
    const auto folder = real_photos();
    if (!folder) GTEST_SKIP() << "no real photos here";
    int met = 0;
    for (const auto& file : files_in(*folder / "good")) {
        const Blob bytes = read_bytes(file);
        if (!jpeg_header_bytes(bytes)) continue;
        ++met;
        const FileMetadata says = read_metadata(metadata_part(bytes));
        const FileMetadata all = read_metadata(bytes);
        EXPECT_EQ(says.taken, all.taken) << file;
        EXPECT_EQ(says.make + says.model + says.serial, all.make + all.model + all.serial) << file;
        EXPECT_EQ(says.orientation, all.orientation) << file;
        EXPECT_EQ(says.width * 100'000 + says.height, all.width * 100'000 + all.height) << file;
        EXPECT_EQ(says.keywords, all.keywords) << file;
        EXPECT_EQ(says.unreadable, all.unreadable) << file;
    }
    EXPECT_GT(met, 5);
}

}  // namespace
}  // namespace quarterturn
