#include "indexer/image/decode.h"

#include <gtest/gtest.h>

#include "indexer/image/codec.h"
#include "tests/support/heif_writer.h"
#include "tests/support/test_pictures.h"
#include "tests/support/tiny_raw.h"

namespace quarterturn {
namespace {

Decoded decode(std::span<const std::byte> bytes, int orientation = 1, int long_edge = 0) {
    return make_local_decoder()->decode({bytes, orientation, long_edge});
}

// The colour in the middle of one quarter: 0 top left, 1 top right, 2 bottom left, 3 bottom right.
cv::Vec3b colour_of_quarter(const cv::Mat& bgr, int quarter) {
    const int x = (quarter % 2 * 2 + 1) * bgr.cols / 4;
    const int y = (quarter / 2 * 2 + 1) * bgr.rows / 4;
    return bgr.at<cv::Vec3b>(y, x);
}

void expect_near(cv::Vec3b found, cv::Vec3b expected, int tolerance) {
    for (int c = 0; c < 3; ++c) EXPECT_NEAR(found[c], expected[c], tolerance) << "channel " << c;
}

struct Kind {
    std::string ending;
    int tolerance;  // lossy kinds move colours a little
};

class EveryKind : public testing::TestWithParam<Kind> {
  protected:
    static std::vector<std::byte> file_of(const cv::Mat& picture) {
        return GetParam().ending == ".heic" ? heic_of(picture)
                                            : encoded(picture, GetParam().ending);
    }
};

TEST_P(EveryKind, comes_out_as_it_went_in) {
    const Decoded decoded = decode(file_of(four_quarters(160, 120)));
    ASSERT_EQ(decoded.refused, "");
    EXPECT_EQ(decoded.full_width, 160);
    EXPECT_EQ(decoded.full_height, 120);
    EXPECT_EQ(decoded.bgr.size(), cv::Size(160, 120));
    expect_near(colour_of_quarter(decoded.bgr, 0), {0, 0, 255}, GetParam().tolerance);
    expect_near(colour_of_quarter(decoded.bgr, 1), {0, 255, 0}, GetParam().tolerance);
    expect_near(colour_of_quarter(decoded.bgr, 2), {255, 0, 0}, GetParam().tolerance);
    expect_near(colour_of_quarter(decoded.bgr, 3), {255, 255, 255}, GetParam().tolerance);
}

TEST_P(EveryKind, is_no_smaller_than_asked_for_and_less_than_twice_as_large) {
    const auto file = file_of(four_quarters(640, 480));
    for (const int long_edge : {1, 80, 81, 160, 161, 320, 639, 640, 5000}) {
        const Decoded decoded = decode(file, 1, long_edge);
        ASSERT_EQ(decoded.refused, "");
        EXPECT_EQ(decoded.full_width, 640);
        EXPECT_GE(decoded.bgr.cols, std::min(long_edge, 640));
        if (long_edge >= 80) {
            EXPECT_LT(decoded.bgr.cols, std::max(2 * long_edge, 641));
        }
        expect_near(colour_of_quarter(decoded.bgr, 2), {255, 0, 0}, GetParam().tolerance);
    }
}

TEST_P(EveryKind, that_is_cut_short_is_refused_wherever_it_is_cut) {
    cv::Mat noise(120, 160, CV_8UC3);
    cv::RNG(17).fill(noise, cv::RNG::UNIFORM, 0, 256);
    const auto file = file_of(noise);
    for (const double share : {0.98, 0.9, 0.7, 0.5, 0.3, 0.1}) {
        const auto length = static_cast<std::size_t>(share * static_cast<double>(file.size()));
        const Decoded decoded = decode(std::span(file).first(length));
        EXPECT_NE(decoded.refused, "") << share << " of " << file.size();
        EXPECT_TRUE(decoded.bgr.empty());
    }
}

INSTANTIATE_TEST_SUITE_P(Kinds, EveryKind,
                         testing::Values(Kind{".jpg", 4}, Kind{".png", 0}, Kind{".tif", 0},
                                         Kind{".webp", 6}, Kind{".heic", 8}),
                         [](const auto& kind) { return kind.param.ending.substr(1); });

TEST(Decode, says_that_a_photo_cut_short_ends_too_early) {
    cv::Mat noise(120, 160, CV_8UC3);
    cv::RNG(17).fill(noise, cv::RNG::UNIFORM, 0, 256);
    for (const auto& file :
         {encoded(noise, ".jpg"), encoded(noise, ".jpg", {cv::IMWRITE_JPEG_PROGRESSIVE, 1}),
          encoded(noise, ".png"), heic_of(noise)}) {
        const auto half = std::span(file).first(file.size() / 2);
        EXPECT_NE(decode(half).refused.find("ends too early"), std::string::npos);
    }
}

TEST(Decode, takes_a_jpeg_that_lacks_only_its_end_marker) {
    auto file = encoded(four_quarters(160, 120), ".jpg");
    file.resize(file.size() - 2);
    EXPECT_EQ(decode(file).refused, "");
}

TEST(Decode, refuses_a_jpeg_whose_middle_was_overwritten) {
    cv::Mat noise(120, 160, CV_8UC3);
    cv::RNG(17).fill(noise, cv::RNG::UNIFORM, 0, 256);
    auto file = encoded(noise, ".jpg");
    std::fill_n(file.begin() + static_cast<std::ptrdiff_t>(file.size() / 2), 2000, std::byte{0xff});
    EXPECT_NE(decode(file).refused.find("damaged"), std::string::npos) << decode(file).refused;
}

// ITU-T T.81, B.2.2: the frame header SOF0 (FF C0) holds height and width from its sixth byte on.
TEST(Decode, refuses_a_picture_of_absurd_size_without_trying) {
    auto file = encoded(four_quarters(16, 16), ".jpg");
    for (std::size_t i = 0; i + 9 < file.size(); ++i) {
        if (file[i] != std::byte{0xff} || file[i + 1] != std::byte{0xc0}) continue;
        // 40000 is 9C 40.
        for (const std::size_t at : {i + 5, i + 7}) {
            file[at] = std::byte{0x9c};
            file[at + 1] = std::byte{0x40};
        }
    }
    const Decoded decoded = decode(file);
    EXPECT_NE(decoded.refused.find("40000 × 40000"), std::string::npos) << decoded.refused;
    EXPECT_NE(decoded.refused.find("250 megapixels"), std::string::npos);
    EXPECT_NO_THROW(check_size(20'000, 12'500));
    EXPECT_THROW(check_size(20'000, 12'501), Refusal);
    EXPECT_THROW(check_size(std::int64_t{1} << 40, std::int64_t{1} << 40), Refusal);
    EXPECT_THROW(check_size(0, 10), Refusal);
}

TEST(Decode, shows_what_is_see_through_on_white) {
    cv::Mat bgra(40, 40, CV_8UC4, cv::Scalar(0, 0, 200, 255));
    bgra({0, 0, 20, 40}).setTo(cv::Scalar(0, 0, 200, 0));
    for (const std::string ending : {".png", ".tif", ".webp"}) {
        const std::vector<int> lossless{cv::IMWRITE_WEBP_QUALITY, 101};
        const Decoded decoded =
            decode(encoded(bgra, ending, ending == ".webp" ? lossless : std::vector<int>{}));
        ASSERT_EQ(decoded.refused, "") << ending;
        expect_near(decoded.bgr.at<cv::Vec3b>(20, 10), {255, 255, 255}, 0);
        expect_near(decoded.bgr.at<cv::Vec3b>(20, 30), {0, 0, 200}, 0);
    }
}

TEST(Decode, brings_sixteen_bits_to_eight) {
    cv::Mat deep(40, 40, CV_16UC3, cv::Scalar(0x2020, 0x8080, 0xffff));
    for (const auto* ending : {".png", ".tif"}) {
        const Decoded decoded = decode(encoded(deep, ending));
        ASSERT_EQ(decoded.refused, "") << ending;
        expect_near(decoded.bgr.at<cv::Vec3b>(20, 20), {0x20, 0x80, 0xff}, 0);
    }
}

TEST(Decode, opens_grey_pictures_as_colour_ones) {
    const cv::Mat grey(40, 40, CV_8UC1, cv::Scalar(77));
    for (const auto* ending : {".jpg", ".png", ".tif"}) {
        const Decoded decoded = decode(encoded(grey, ending));
        ASSERT_EQ(decoded.refused, "") << ending;
        EXPECT_EQ(decoded.bgr.type(), CV_8UC3);
        expect_near(decoded.bgr.at<cv::Vec3b>(20, 20), {77, 77, 77}, 1);
    }
}

TEST(Decode, takes_raw_videos_and_letters_for_what_they_are) {
    EXPECT_NE(decode({}).refused.find("empty"), std::string::npos);
    const std::string letter = "Dear diary, today the bun held all evening.";
    EXPECT_NE(decode(std::as_bytes(std::span(letter))).refused.find("not a photo"),
              std::string::npos);
    const auto raw = tiny_raw(encoded(four_quarters(32, 16), ".jpg"));
    EXPECT_NE(decode(raw).refused.find("RAW"), std::string::npos);
}

TEST(Decode, applies_no_orientation_that_exif_does_not_know) {
    const auto file = encoded(four_quarters(160, 120), ".png");
    for (const int orientation : {-1, 0, 9, 1000}) {
        const Decoded decoded = decode(file, orientation);
        EXPECT_EQ(decoded.orientation_applied, 1);
        EXPECT_EQ(decoded.bgr.size(), cv::Size(160, 120));
    }
}

}  // namespace
}  // namespace quarterturn
