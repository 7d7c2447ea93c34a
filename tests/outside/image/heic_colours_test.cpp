// Pictures that libx265 encoded, mixed by every matrix of ITU-T H.273 that photos use: shrunk while
// they are opened, they show what was encoded.

#include <gtest/gtest.h>

#include <opencv2/imgproc.hpp>

#include "indexer/image/local_decoder.h"
#include "tests/support/heif_writer.h"

namespace quarterturn {
namespace {

constexpr int square_edge = 64;

// Strong colours, each in a square of its own.
cv::Mat coloured_squares() {
    const std::array colours{
        cv::Scalar(30, 30, 220),  cv::Scalar(40, 200, 40),   cv::Scalar(230, 60, 30),
        cv::Scalar(20, 210, 230), cv::Scalar(200, 200, 30),  cv::Scalar(210, 40, 200),
        cv::Scalar(20, 20, 20),   cv::Scalar(240, 240, 240), cv::Scalar(96, 128, 170)};
    cv::Mat picture(3 * square_edge, 3 * square_edge, CV_8UC3);
    for (int i = 0; i < 9; ++i) {
        picture(cv::Rect(i % 3 * square_edge, i / 3 * square_edge, square_edge, square_edge)) =
            colours[static_cast<std::size_t>(i)];
    }
    return picture;
}

// The middle of each square, where the next one's colour does not reach.
void expect_same_squares(const Decoded& decoded, const cv::Mat& picture) {
    ASSERT_EQ(decoded.refused, "");
    ASSERT_EQ(decoded.full_width, picture.cols);
    ASSERT_EQ(decoded.bgr.cols * 4, picture.cols) << "a quarter as wide";
    for (int i = 0; i < 9; ++i) {
        SCOPED_TRACE(i);
        const cv::Point middle(i % 3 * square_edge + square_edge / 2,
                               i / 3 * square_edge + square_edge / 2);
        EXPECT_LE(cv::norm(decoded.bgr.at<cv::Vec3b>(middle / 4), picture.at<cv::Vec3b>(middle),
                           cv::NORM_INF),
                  4);
    }
}

TEST(HeicColours, AreWhatWasEncodedByEveryMatrixAndRange) {
    const cv::Mat picture = coloured_squares();
    for (const int matrix : {1, 4, 5, 6, 7, 9}) {
        for (const bool full_range : {true, false}) {
            SCOPED_TRACE(testing::Message() << "matrix " << matrix << (full_range ? " full" : ""));
            const auto file = heic_of(
                picture,
                {.colour_primaries = 1, .matrix_coefficients = matrix, .full_range = full_range});
            expect_same_squares(make_local_decoder()->decode({file, 1, picture.cols / 4}), picture);
        }
    }
}

TEST(HeicColours, AreThoseOfPhonesWhereNothingIsNamed) {
    const cv::Mat picture = coloured_squares();
    expect_same_squares(make_local_decoder()->decode({heic_of(picture), 1, picture.cols / 4}),
                        picture);
}

}  // namespace
}  // namespace quarterturn
