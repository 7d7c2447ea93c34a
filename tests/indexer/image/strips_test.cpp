// Read back by OpenCV's own codecs.

#include "indexer/image/strips.h"

#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>

#include "indexer/image/encode.h"
#include "indexer/image/profile.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

cv::Mat decoded_from(const std::vector<std::byte>& file) {
    const auto* first = reinterpret_cast<const uchar*>(file.data());
    return cv::imdecode(std::vector<uchar>(first, first + file.size()), cv::IMREAD_COLOR);
}

cv::Mat noise_of(int width, int height) {
    cv::Mat picture(height, width, CV_8UC3);
    cv::RNG(1).fill(picture, cv::RNG::UNIFORM, 0, 256);
    return picture;
}

std::vector<cv::Mat> strips_of(const cv::Mat& bgr) {
    cv::Mat bgrx;
    cv::cvtColor(bgr, bgrx, cv::COLOR_BGR2BGRA);
    std::vector<cv::Mat> strips;
    for (int first = 0; first < bgr.rows; first += strip_rows) {
        strips.push_back(bgrx.rowRange(first, std::min(first + strip_rows, bgr.rows)));
    }
    return strips;
}

std::vector<std::byte> jpeg_from_strips(const cv::Mat& bgr) {
    std::vector<std::vector<std::byte>> strips;
    for (const cv::Mat& strip : strips_of(bgr)) strips.push_back(jpeg_strip(strip, 92, {300, {}}));
    return jpeg_of(strips, bgr.rows);
}

std::vector<std::byte> png_from_strips(const cv::Mat& bgr) {
    const std::vector<cv::Mat> strips = strips_of(bgr);
    std::vector<PngStrip> made;
    for (const cv::Mat& strip : strips) made.push_back(png_strip(strip, &strip == &strips.back()));
    const std::vector<std::byte> icc = srgb_profile();
    return png_of(made, bgr.size(), {300, icc});
}

// More than eight strips, so that the numbers of the marks between them begin anew.
const std::vector<cv::Size> sizes{
    {1, 1}, {37, 15}, {640, strip_rows}, {333, strip_rows + 1}, {65, 10 * strip_rows - 7}};

TEST(Strips, OfAJpegAreTheSamePictureAsAJpegInOnePiece) {
    for (const cv::Size& size : sizes) {
        const cv::Mat picture = noise_of(size.width, size.height);
        const cv::Mat whole = decoded_from(jpeg_bytes(picture, 92));
        const cv::Mat read = decoded_from(jpeg_from_strips(picture));
        ASSERT_EQ(read.size(), size);
        EXPECT_EQ(cv::norm(read, whole, cv::NORM_INF), 0) << size;
    }
}

TEST(Strips, OfAPngLoseNothing) {
    for (const cv::Size& size : sizes) {
        const cv::Mat picture = noise_of(size.width, size.height);
        const cv::Mat read = decoded_from(png_from_strips(picture));
        ASSERT_EQ(read.size(), size);
        EXPECT_EQ(cv::norm(read, picture, cv::NORM_INF), 0) << size;
    }
}

}  // namespace
}  // namespace quarterturn
