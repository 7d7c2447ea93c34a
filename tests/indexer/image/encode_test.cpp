#include "indexer/image/encode.h"

#include <gtest/gtest.h>

#include <opencv2/imgcodecs.hpp>

#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

// Read back by OpenCV's own codecs, on another road than the writer's.
cv::Mat read_back(const std::vector<std::byte>& jpeg) {
    const std::vector<uchar> bytes(reinterpret_cast<const uchar*>(jpeg.data()),
                                   reinterpret_cast<const uchar*>(jpeg.data()) + jpeg.size());
    return cv::imdecode(bytes, cv::IMREAD_COLOR);
}

TEST(JpegBytes, HoldThePictureInItsColoursAndSize) {
    const cv::Mat picture = four_quarters(64, 48);
    const cv::Mat read = read_back(jpeg_bytes(picture, 95));
    ASSERT_EQ(read.size(), picture.size());
    EXPECT_LT(cv::norm(read, picture, cv::NORM_L1) / static_cast<double>(picture.total() * 3), 3);
}

TEST(JpegBytes, HoldAPartOfALargerPicture) {
    const cv::Mat part =
        four_quarters(64, 48)({32, 0, 32, 24});  // all green, rows not in one piece
    const cv::Mat read = read_back(jpeg_bytes(part, 95));
    EXPECT_LT(cv::norm(read, part, cv::NORM_INF), 8);
}

TEST(JpegBytes, GrowWithQuality) {
    cv::Mat noise(64, 64, CV_8UC3);
    cv::RNG(1).fill(noise, cv::RNG::UNIFORM, 0, 256);
    EXPECT_LT(jpeg_bytes(noise, 40).size(), jpeg_bytes(noise, 90).size());
}

TEST(JpegBytes, RefuseWhatNoJpegCanHold) {
    EXPECT_THROW(jpeg_bytes(cv::Mat(), 90), std::runtime_error);
    EXPECT_THROW(jpeg_bytes(cv::Mat(1, 70'000, CV_8UC3, cv::Scalar::all(0)), 90),
                 std::runtime_error);
}

}  // namespace
}  // namespace quarterturn
