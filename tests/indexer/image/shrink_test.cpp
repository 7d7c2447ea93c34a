#include "indexer/image/shrink.h"

#include <opencv2/imgproc.hpp>

#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

// OpenCV's mean over areas, worked out in floating point, is the oracle.
RC_GTEST_PROP(ShrunkTo, IsTheMeanOfWhatEachPixelStandsFor, ()) {
    const int width = *rc::gen::inRange(1, 90);
    const int height = *rc::gen::inRange(1, 90);
    cv::Mat picture(height, width, CV_8UC3);
    cv::RNG(*rc::gen::arbitrary<unsigned>()).fill(picture, cv::RNG::UNIFORM, 0, 256);
    const cv::Size size(*rc::gen::inRange(1, width + 1), *rc::gen::inRange(1, height + 1));
    cv::Mat expected;
    cv::resize(picture, expected, size, 0, 0, cv::INTER_AREA);
    const cv::Mat small = shrunk_to(picture, size);
    RC_ASSERT(small.size() == size);
    RC_ASSERT(cv::norm(small, expected, cv::NORM_INF) <= 2);
}

TEST(ShrunkTo, KeepsWhiteWhiteAndBlackBlack) {
    for (const double value : {0.0, 255.0}) {
        const cv::Mat picture(77, 131, CV_8UC3, cv::Scalar::all(value));
        const cv::Mat small = shrunk_to(picture, {50, 31});
        EXPECT_EQ(cv::norm(small, cv::Mat(31, 50, CV_8UC3, cv::Scalar::all(value)), cv::NORM_INF),
                  0);
    }
}

TEST(ShrunkTo, TakesAPartOfALargerPicture) {
    const cv::Mat part = four_quarters(64, 48)({32, 0, 32, 24});  // all of one colour
    const cv::Mat small = shrunk_to(part, {7, 5});
    EXPECT_EQ(small.at<cv::Vec3b>(4, 6), part.at<cv::Vec3b>(0, 0));
}

}  // namespace
}  // namespace quarterturn
