#include "indexer/image/measure.h"

#include <gtest/gtest.h>

#include <bit>

#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

// Tilted squares of many greys, sharp on every side.
cv::Mat squares(double contrast = 1) {
    cv::Mat grey(900, 1200, CV_8UC1, cv::Scalar(128));
    cv::RNG random(11);
    for (int i = 0; i < 150; ++i) {
        const cv::RotatedRect square(
            cv::Point2f(random.uniform(0.F, 1200.F), random.uniform(0.F, 900.F)),
            cv::Size2f(random.uniform(30.F, 120.F), random.uniform(30.F, 120.F)),
            random.uniform(0.F, 90.F));
        std::vector<cv::Point2f> corners(4);
        square.points(corners.data());
        const std::vector<cv::Point> polygon(corners.begin(), corners.end());
        cv::fillConvexPoly(grey, polygon, cv::Scalar(128 + contrast * random.uniform(-100, 100)));
    }
    cv::Mat bgr;
    cv::cvtColor(grey, bgr, cv::COLOR_GRAY2BGR);
    return bgr;
}

cv::Mat blurred(const cv::Mat& picture, double sigma_x, double sigma_y) {
    cv::Mat result;
    cv::GaussianBlur(picture, result, {}, sigma_x, sigma_y);
    return result;
}

TEST(Measure, focus_falls_with_every_bit_of_blur) {
    double last = measure(squares()).focus;
    for (const double sigma : {1.0, 2.0, 4.0, 8.0}) {
        const double focus = measure(blurred(squares(), sigma, sigma)).focus;
        EXPECT_LT(focus, last) << sigma;
        last = focus;
    }
}

// Pech-Pacheco et al. (2000) order pictures of one thing by the variance of their Laplacian.
TEST(Measure, focus_orders_pictures_of_one_thing_as_the_variance_of_the_laplacian_does) {
    const auto variance = [](const cv::Mat& picture) {
        cv::Mat laplacian;
        cv::Laplacian(picture, laplacian, CV_32F);
        cv::Scalar mean, spread;
        cv::meanStdDev(laplacian, mean, spread);
        return spread[0];
    };
    std::vector<cv::Mat> pictures;
    for (const double sigma : {3.0, 0.8, 5.0, 1.5, 2.2})
        pictures.push_back(blurred(squares(), sigma, sigma));
    for (const auto& one : pictures) {
        for (const auto& other : pictures) {
            EXPECT_EQ(variance(one) < variance(other), measure(one).focus < measure(other).focus);
        }
    }
}

TEST(Measure, focus_does_not_depend_on_contrast) {
    const double full = measure(squares(1)).focus;
    EXPECT_NEAR(measure(squares(0.3)).focus, full, 0.15 * full);
}

TEST(Measure, motion_is_seen_whichever_way_it_goes) {
    const double all_round = measure(blurred(squares(), 6, 6)).motion;
    for (const int angle : {0, 30, 45, 70, 90, 135, 160}) {
        cv::Mat kernel = cv::Mat::zeros(41, 41, CV_32F);
        const double radians = angle * CV_PI / 180;
        const cv::Point reach(cvRound(20 * std::cos(radians)), cvRound(20 * std::sin(radians)));
        cv::line(kernel, cv::Point(20, 20) - reach, cv::Point(20, 20) + reach, cv::Scalar(1));
        cv::Mat moved;
        cv::filter2D(squares(), moved, -1, kernel / cv::sum(kernel)[0]);
        EXPECT_GT(measure(moved).motion, 2 * all_round) << angle;
    }
}

TEST(Measure, focus_and_motion_are_unknown_in_a_plain_or_tiny_picture) {
    EXPECT_EQ(measure(cv::Mat(900, 1200, CV_8UC3, cv::Scalar(90, 90, 90))).focus, 0);
    EXPECT_EQ(measure(four_quarters(20, 20)).focus, 0);
    EXPECT_EQ(measure({}).focus, 0);
}

TEST(Measure, light_is_the_mean_and_the_shares_at_both_ends) {
    cv::Mat picture(400, 400, CV_8UC3, cv::Scalar(128, 128, 128));
    picture({0, 0, 400, 100}).setTo(cv::Scalar(255, 255, 255));
    picture({0, 100, 200, 100}).setTo(cv::Scalar(0, 0, 0));
    const Measures measures = measure(picture);
    EXPECT_NEAR(measures.clipped_highlights, 0.25, 1e-9);
    EXPECT_NEAR(measures.clipped_shadows, 0.125, 1e-9);
    EXPECT_NEAR(measures.mean_light, 0.25 + 0.625 * 128 / 255, 1e-9);
}

TEST(Measure, is_much_the_same_at_any_size_a_photo_is_decoded_at) {
    cv::Mat large;
    cv::resize(squares(), large, {}, 4, 4, cv::INTER_LINEAR);
    cv::Mat half;
    cv::resize(large, half, {}, 0.5, 0.5, cv::INTER_AREA);
    EXPECT_NEAR(measure(half).focus, measure(large).focus, 0.1 * measure(large).focus);
}

int bits_apart(Fingerprint one, Fingerprint other) {
    return std::popcount(one ^ other);
}

TEST(Fingerprint, stays_when_a_photo_is_shrunk_or_saved_again_and_differs_for_another) {
    const cv::Mat picture = squares();
    cv::Mat small;
    cv::resize(picture, small, {}, 0.4, 0.4, cv::INTER_AREA);
    const auto saved = encoded(picture, ".jpg", {cv::IMWRITE_JPEG_QUALITY, 60});
    const cv::Mat again = cv::imdecode(
        cv::Mat(1, static_cast<int>(saved.size()), CV_8UC1, const_cast<std::byte*>(saved.data())),
        cv::IMREAD_COLOR);
    EXPECT_LE(bits_apart(fingerprint(picture), fingerprint(small)), 2);
    EXPECT_LE(bits_apart(fingerprint(picture), fingerprint(again)), 2);
    cv::Mat mirrored;
    cv::flip(picture, mirrored, 1);
    EXPECT_GE(bits_apart(fingerprint(picture), fingerprint(mirrored)), 16);
    EXPECT_EQ(fingerprint({}), 0U);
}

}  // namespace
}  // namespace quarterturn
