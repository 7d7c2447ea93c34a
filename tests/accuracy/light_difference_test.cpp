// Exposure and white balance on generated photos whose difference is known, before and after of one
// head, so that all but the background changes; and on the demo photos.

#include "indexer/image/light_difference.h"

#include <gtest/gtest.h>

#include <cmath>
#include <opencv2/imgproc.hpp>

#include "demo_photos/picture/develop.h"
#include "demo_photos/story/angles.h"
#include "tests/support/demo_truth.h"

namespace quarterturn {
namespace {

using demo::Style;

class LightOfGeneratedPhotos : public testing::Test {
  protected:
    static void SetUpTestSuite() {
        before = photograph(Style::brushed_out, 1);
        after = photograph(Style::low_bun, 2);
    }
    static void TearDownTestSuite() {
        before.release();
        after.release();
    }

    static cv::Mat photograph(Style style, std::uint32_t number) {
        demo::Head head(demo::sitter_for(demo::Who::a, style), 0.3F);
        const auto view = demo::view_for("front", demo::Who::a, style, number);
        return head.photograph(view, {}, {300, 400}).linear;
    }

    // The room of the demo is bright: a little less light than its own, as a careful camera takes.
    static cv::Mat developed(const cv::Mat& linear, float ev, float warmth = 0) {
        demo::Develop how;
        how.exposure_ev = ev - 0.3F;
        how.warmth = warmth;
        how.seed = linear.data == after.data ? 2 : 1;
        return demo::develop(linear, how);
    }

    static inline cv::Mat before, after;
};

TEST_F(LightOfGeneratedPhotos, ExposureIsToldInEv) {
    const cv::Mat first = developed(before, 0);
    for (const float ev : {-2.0F, -1.0F, -0.5F, 0.0F, 0.33F}) {
        const auto difference = light_difference(first, developed(after, ev));
        ASSERT_TRUE(difference) << ev;
        EXPECT_NEAR(difference->exposure_ev, ev, 0.05) << ev;
        EXPECT_LT(difference->white_balance_de00, 0.8) << ev;
        EXPECT_FALSE(difference->at_least) << ev;
        const auto back = light_difference(developed(after, ev), first);
        EXPECT_NEAR(back->exposure_ev, -ev, 0.05) << ev;
    }
}

TEST_F(LightOfGeneratedPhotos, AtLeastSoMuchWhereTheBackgroundIsBright) {
    const auto difference = light_difference(developed(before, 0), developed(after, 1));
    ASSERT_TRUE(difference);
    EXPECT_TRUE(difference->at_least);
    EXPECT_GT(difference->exposure_ev, 0.6);
    EXPECT_LT(difference->exposure_ev, 1.02);
    EXPECT_FALSE(light_difference(developed(before, 0), developed(after, 2.5F)))
        << "nothing but white is left of the wall";
}

// What the develop step does to the channels at this warmth, as a colour difference of grey.
TEST_F(LightOfGeneratedPhotos, WhiteBalanceIsToldApartFromExposure) {
    for (const float warmth : {-1.0F, 1.0F}) {
        const auto difference =
            light_difference(developed(before, 0), developed(after, -1, warmth));
        ASSERT_TRUE(difference);
        EXPECT_NEAR(difference->exposure_ev, -1, 0.06);
        EXPECT_GT(difference->white_balance_de00, 2.4);
        EXPECT_LT(difference->white_balance_de00, 3.6);
    }
}

TEST(LightDifference, CannotBeToldOfPicturesWithoutBackground) {
    const cv::Mat white(200, 150, CV_8UC3, cv::Scalar(255, 255, 255));
    EXPECT_FALSE(light_difference(white, white));
    EXPECT_FALSE(light_difference(cv::Mat(8, 200, CV_8UC3, cv::Scalar(90, 90, 90)), white));
    EXPECT_FALSE(light_difference({}, white));
}

// One room and one lamp at the trial; another room on the wedding day.
TEST(LightDifference, TellsTheRoomOfTheTrialFromThatOfTheDay) {
    const auto picture = [](const std::string& file) {
        for (const auto& row : demo_truth()) {
            if (row.at("file") == file) return demo_picture(row, 512);
        }
        throw std::runtime_error(file);
    };
    const cv::Mat before = picture("phone/20260822_141003.jpg");
    const auto same = light_difference(before, picture("phone/20260822_153002.jpg"));
    ASSERT_TRUE(same);
    EXPECT_LT(std::abs(same->exposure_ev), 0.1);
    EXPECT_LT(same->white_balance_de00, 1);
    const auto other = light_difference(before, picture("phone/20261010_114620.jpg"));
    ASSERT_TRUE(other);
    EXPECT_GT(other->white_balance_de00, 3);
}

}  // namespace
}  // namespace quarterturn
