// Photos damaged at random, and the hostile ones of others: whatever the bytes, there is a picture
// or a sentence at the end. The sanitizers watch over this.

#include <gtest/gtest.h>

#include "indexer/image/decode.h"
#include "indexer/metadata/read.h"
#include "tests/support/files.h"
#include "tests/support/heif_writer.h"
#include "tests/support/mutations.h"
#include "tests/support/test_pictures.h"
#include "tests/support/tiny_raw.h"

namespace quarterturn {
namespace {

void expect_a_picture_or_a_sentence(std::span<const std::byte> bytes) {
    const FileMetadata metadata = read_metadata(bytes);
    EXPECT_GE(metadata.orientation, 1);
    EXPECT_LE(metadata.orientation, 8);
    const Decoded decoded = make_local_decoder()->decode({bytes, metadata.orientation, 64});
    EXPECT_NE(decoded.bgr.empty(), decoded.refused.empty());
    EXPECT_TRUE(decoded.bgr.empty() || decoded.bgr.type() == CV_8UC3);
    EXPECT_TRUE(decoded.ok() || decoded.refused.ends_with('.'));
    if (sniff(bytes) == FileKind::raw) raw_preview(bytes);
}

struct Seedling {
    std::string name;
    std::vector<std::byte> file;
};

std::vector<Seedling> small_valid_files() {
    cv::Mat busy = four_quarters(96, 64);
    cv::RNG(3).fill(busy({20, 20, 50, 30}), cv::RNG::UNIFORM, 0, 256);
    const auto jpeg = encoded(busy, ".jpg");
    return {{"baseline JPEG", jpeg},
            {"progressive JPEG", encoded(busy, ".jpg", {cv::IMWRITE_JPEG_PROGRESSIVE, 1})},
            {"PNG", encoded(busy, ".png")},
            {"TIFF", encoded(busy, ".tif")},
            {"WebP", encoded(busy, ".webp")},
            {"HEIC", heic_of(busy, {.orientation = 6})},
            {"RAW", tiny_raw(jpeg)}};
}

TEST(DamagedPhotos, end_as_a_picture_or_a_sentence) {
    constexpr std::uint32_t runs_each = 150;
    for (const auto& [name, file] : small_valid_files()) {
        for (std::uint32_t seed = 0; seed < runs_each; ++seed) {
            SCOPED_TRACE(name + ", seed " + std::to_string(seed));
            expect_a_picture_or_a_sentence(damaged(file, seed));
        }
    }
}

TEST(DamagedPhotos, of_others_end_as_a_picture_or_a_sentence) {
    SKIP_WITHOUT_REAL_PHOTOS();
    for (const auto& file : files_in(*real_photos() / "broken")) {
        SCOPED_TRACE(file.filename().string());
        expect_a_picture_or_a_sentence(read_bytes(file));
    }
}

}  // namespace
}  // namespace quarterturn
