// What is left out of a picture where only hair may show, by what is known of face, head and side.
// whole_head and side.

#include "indexer/image/hair_only.h"

#include <gtest/gtest.h>

#include <opencv2/imgproc.hpp>

namespace quarterturn {
namespace {

const cv::Size upright{1200, 1600};
const cv::Rect found_face{400, 500, 400, 400};
const cv::Rect whole_head{350, 300, 500, 700};

cv::Rect in_pixels(const HairOnly& how) {
    return {cvRound(how.x * upright.width), cvRound(how.y * upright.height),
            cvRound(how.width * upright.width), cvRound(how.height * upright.height)};
}

std::vector<cv::Rect> areas(const HeadInPicture& shown, HairOnlyWay way) {
    std::vector<cv::Rect> found;
    for (const HairOnly& how : ways_without_face(shown)) {
        if (how.way == way) found.push_back(in_pixels(how));
    }
    return found;
}

TEST(HairOnly, NoCropHoldsAnyOfTheFaceAndTheOneWithMostHairComesFirst) {
    const auto crops = areas({upright, {found_face}, whole_head, Angle::front}, HairOnlyWay::crop);
    ASSERT_FALSE(crops.empty());
    int before = whole_head.area();
    for (const cv::Rect& crop : crops) {
        EXPECT_EQ((crop & found_face).area(), 0) << crop;
        EXPECT_LE((crop & whole_head).area(), before) << crop;
        before = (crop & whole_head).area();
    }
}

TEST(HairOnly, TheSkinOfTheFaceIsCoveredAloneBeforeAllThatMayBelongToIt) {
    const cv::Rect skin{460, 560, 280, 600};  // with the neck
    const auto covers =
        areas({upright, {found_face}, whole_head, Angle::front, skin}, HairOnlyWay::cover);
    ASSERT_EQ(covers.size(), 2U);
    const cv::Rect shown_of_face = skin & found_face;
    EXPECT_EQ(covers[0] & shown_of_face, shown_of_face);
    EXPECT_LT(covers[0].area(), covers[1].area());
    EXPECT_EQ(covers[1] & found_face, found_face);
}

TEST(HairOnly, ASecondFaceIsNeverLeftBesideACoverOfTheFirst) {
    const cv::Rect in_the_mirror{900, 100, 200, 200};
    const auto covers =
        areas({upright, {found_face, in_the_mirror}, whole_head, Angle::front, found_face},
              HairOnlyWay::cover);
    ASSERT_EQ(covers.size(), 1U);
    EXPECT_EQ(covers[0] & found_face, found_face);
    EXPECT_EQ(covers[0] & in_the_mirror, in_the_mirror);
}

TEST(HairOnly, WithoutAFaceTheSideTellsWhichHalfLooksAway) {
    const cv::Point nose_left{whole_head.x, 700},
        nose_right{whole_head.x + whole_head.width - 1, 700};
    const auto left = areas({upright, {}, whole_head, Angle::left}, HairOnlyWay::crop);
    const auto right =
        areas({upright, {}, whole_head, Angle::right_three_quarter}, HairOnlyWay::crop);
    ASSERT_EQ(left.size(), 1U);
    ASSERT_EQ(right.size(), 1U);
    EXPECT_FALSE(left[0].contains(nose_left));
    EXPECT_TRUE(left[0].contains(nose_right));
    EXPECT_TRUE(right[0].contains(nose_left));
    EXPECT_FALSE(right[0].contains(nose_right));
    EXPECT_EQ(areas({upright, {}, whole_head, Angle::back}, HairOnlyWay::crop),
              std::vector<cv::Rect>{cv::Rect({}, upright)});
    EXPECT_TRUE(ways_without_face({upright, {}, whole_head, Angle::front}).empty());
}

TEST(HairOnly, NothingUnderACoverCanBeToldApart) {
    cv::Mat picture(400, 300, CV_8UC3);
    cv::randu(picture, 0, 255);
    HairOnly how;
    how.way = HairOnlyWay::cover;
    how.x = how.y = 0.25;
    how.width = how.height = 0.5;
    const cv::Mat covered = without_face(picture, how);
    cv::Mat inside(picture.size(), CV_8UC1, cv::Scalar(0));
    cv::ellipse(inside, {150, 200}, {74, 99}, 0, 0, 360, 255, cv::FILLED);
    cv::Scalar mean, spread;
    cv::meanStdDev(covered, mean, spread, inside);
    EXPECT_EQ(spread, cv::Scalar());
    EXPECT_EQ(covered.at<cv::Vec3b>(5, 5), picture.at<cv::Vec3b>(5, 5));
}

TEST(PerhapsFace, SeenTwiceInTheWholePictureCountsWhereItIsCut) {
    const cv::Size picture(400, 400);
    const std::vector<cv::Rect> seen{{100, 100, 100, 100}, {104, 98, 102, 102}};
    const auto shows = [&](HairOnlyWay way, const cv::Rect& box) {
        HairOnly how;
        how.way = way;
        how.x = box.x / 400.0;
        how.y = box.y / 400.0;
        how.width = box.width / 400.0;
        how.height = box.height / 400.0;
        return shows_perhaps_face(how, picture, seen);
    };
    EXPECT_TRUE(shows(HairOnlyWay::crop, {0, 0, 400, 400}));
    EXPECT_TRUE(shows(HairOnlyWay::crop, {0, 0, 400, 150})) << "brows and eyes";
    EXPECT_FALSE(shows(HairOnlyWay::crop, {0, 0, 400, 100}));
    EXPECT_FALSE(shows(HairOnlyWay::crop, {220, 0, 180, 400}));
    EXPECT_FALSE(shows(HairOnlyWay::cover, {90, 90, 130, 130}));
    EXPECT_TRUE(shows(HairOnlyWay::cover, {90, 90, 130, 50}));
    const HairOnly whole;
    EXPECT_FALSE(shows_perhaps_face(whole, picture, std::vector<cv::Rect>{seen[0]}))
        << "seen once, it is taken for hair";
}

}  // namespace
}  // namespace quarterturn
