#include <gtest/gtest.h>

#include "indexer/image/decode.h"
#include "tests/support/heif_writer.h"
#include "tests/support/test_pictures.h"
#include "tests/support/tiny_raw.h"

namespace quarterturn {
namespace {

FileKind kind_of(std::string text) {
    text.resize(std::max<std::size_t>(text.size(), 32));
    return sniff(std::as_bytes(std::span(text)));
}

TEST(Sniff, knows_each_kind_by_its_content_whatever_its_name) {
    const cv::Mat picture = four_quarters(32, 16);
    EXPECT_EQ(sniff(encoded(picture, ".jpg")), FileKind::jpeg);
    EXPECT_EQ(sniff(encoded(picture, ".png")), FileKind::png);
    EXPECT_EQ(sniff(encoded(picture, ".tif")), FileKind::tiff);
    EXPECT_EQ(sniff(encoded(picture, ".webp")), FileKind::webp);
    EXPECT_EQ(sniff(heic_of(picture)), FileKind::heif);
}

TEST(Sniff, tells_raw_from_tiff_by_a_picture_laid_out_as_the_sensor_is) {
    EXPECT_EQ(sniff(tiny_raw(encoded(four_quarters(32, 16), ".jpg"))), FileKind::raw);
    EXPECT_EQ(kind_of(std::string("FUJIFILMCCD-RAW 0201")), FileKind::raw);
    EXPECT_EQ(kind_of(std::string("IIU\0\x18\0\0\0", 8)), FileKind::raw);
}

TEST(Sniff, tells_videos_from_pictures_in_the_same_wrapping) {
    EXPECT_EQ(kind_of(std::string("\0\0\0\x18"
                                  "ftypmp42\0\0\0\0mp42isom",
                                  24)),
              FileKind::video);
    EXPECT_EQ(kind_of(std::string("\0\0\0\x14"
                                  "ftypqt  \0\0\0\0qt  ",
                                  20)),
              FileKind::video);
    EXPECT_EQ(kind_of(std::string("\0\0\0\x18"
                                  "ftypavif\0\0\0\0avifmif1",
                                  24)),
              FileKind::heif);
    EXPECT_EQ(kind_of(std::string("\0\0\0\x18"
                                  "ftypcrx \0\0\0\1crx isom",
                                  24)),
              FileKind::raw);
    // A brand of its own first, and the picture's brand among the compatible ones.
    EXPECT_EQ(kind_of(std::string("\0\0\0\x1c"
                                  "ftypiso8\0\0\0\0iso8heicmif1",
                                  28)),
              FileKind::heif);
    EXPECT_EQ(kind_of("RIFF\x10\x10\x10\x10"
                      "AVI LIST"),
              FileKind::video);
}

TEST(Sniff, takes_nothing_else_for_a_photo) {
    EXPECT_EQ(sniff({}), FileKind::other);
    EXPECT_EQ(kind_of("%PDF-1.7"), FileKind::other);
    EXPECT_EQ(kind_of("Dear diary, today"), FileKind::other);
}

}  // namespace
}  // namespace quarterturn
