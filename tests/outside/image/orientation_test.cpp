// All eight EXIF orientations against ImageMagick's own reading of them, and against the file's own
// turning in HEIC.

#include <gtest/gtest.h>

#include "indexer/image/decode.h"
#include "tests/support/command.h"
#include "tests/support/files.h"
#include "tests/support/heif_writer.h"
#include "tests/support/temporary_folder.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

double greatest_difference(const cv::Mat& one, const cv::Mat& other) {
    return one.size() == other.size() ? cv::norm(one, other, cv::NORM_INF) : 1000;
}

class Orientation : public testing::TestWithParam<int> {};

TEST_P(Orientation, of_a_photo_is_applied_as_imagemagick_applies_it) {
    const TemporaryFolder folder;
    const auto photo = folder / "photo.tif";
    const auto turned = folder / "turned.png";
    write_bytes(photo, encoded(four_quarters(64, 48), ".tif"));
    output_of("exiftool -q -overwrite_original -IFD0:Orientation#=" + std::to_string(GetParam()) +
              " " + shell_word(photo.string()));
    output_of("convert " + shell_word(photo.string()) + " -auto-orient -strip " +
              shell_word(turned.string()));
    const Decoded decoded = make_local_decoder()->decode({read_bytes(photo), GetParam(), 0});
    ASSERT_EQ(decoded.refused, "");
    EXPECT_EQ(decoded.orientation_applied, GetParam());
    EXPECT_EQ(greatest_difference(decoded.bgr, cv::imread(turned.string())), 0);
    EXPECT_EQ(cv::Size(decoded.full_width, decoded.full_height), decoded.bgr.size());
}

// ISO/IEC 23008-12: irot and imir are applied by the decoder, and EXIF is then information only.
TEST_P(Orientation, of_a_heic_is_its_own_and_exif_does_not_turn_it_again) {
    const cv::Mat picture = four_quarters(128, 96);
    const auto decoder = make_local_decoder();
    const Decoded plain = decoder->decode({encoded(picture, ".png"), GetParam(), 0});
    for (const int exif : {1, GetParam(), 6}) {
        const Decoded heic =
            decoder->decode({heic_of(picture, {.orientation = GetParam()}), exif, 0});
        ASSERT_EQ(heic.refused, "");
        EXPECT_EQ(heic.orientation_applied, 1);
        EXPECT_EQ(heic.full_width, plain.full_width);
        EXPECT_EQ(heic.full_height, plain.full_height);
        // In the middle of each quarter, away from what compression does to the seams.
        for (const int quarter : {0, 1, 2, 3}) {
            const cv::Point middle((quarter % 2 * 2 + 1) * plain.bgr.cols / 4,
                                   (quarter / 2 * 2 + 1) * plain.bgr.rows / 4);
            EXPECT_LE(cv::norm(heic.bgr.at<cv::Vec3b>(middle), plain.bgr.at<cv::Vec3b>(middle),
                               cv::NORM_INF),
                      8)
                << "quarter " << quarter << ", EXIF " << exif;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(All, Orientation, testing::Range(1, 9));

}  // namespace
}  // namespace quarterturn
