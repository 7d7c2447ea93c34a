#include "indexer/image/head_outline.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <opencv2/imgproc.hpp>

namespace quarterturn {
namespace {

const cv::Point middle_of_head(192, 190);
constexpr double radius_of_head = 90;

// Hair before a wall, and clothes that fall off from the neck.
cv::Mat from_behind(const cv::Point& head = middle_of_head) {
    cv::Mat bgr(512, 384, CV_8UC3, cv::Scalar(205, 210, 215));
    const std::vector<cv::Point> clothes{{150, 340}, {234, 340}, {380, 410},
                                         {380, 511}, {4, 511},   {4, 410}};
    cv::fillPoly(bgr, std::vector{clothes}, cv::Scalar(150, 140, 120));
    cv::rectangle(bgr, cv::Rect(150, head.y, 84, 360 - head.y), {40, 60, 80}, cv::FILLED);
    cv::circle(bgr, head, static_cast<int>(radius_of_head), {40, 60, 80}, cv::FILLED);
    cv::Mat grain(bgr.size(), CV_8UC3);
    cv::theRNG().state = 7;
    cv::randu(grain, 0, 6);
    return bgr + grain;
}

TEST(HeadOutline, ItsTopLiesOnTheHeadAndPointsOutwards) {
    const auto outline = head_outline(from_behind());
    ASSERT_TRUE(outline);
    EXPECT_NEAR(outline->width, 2 * radius_of_head / 512, 0.02);
    const Spot middle{middle_of_head.x / 512.0, middle_of_head.y / 512.0};
    double leftmost = 1, rightmost = 0;
    for (const OutlinePoint& point : outline->top) {
        EXPECT_NEAR(distance(point.at, middle), radius_of_head / 512, 0.008);
        const double towards = ((point.at.x - middle.x) * point.outwards.x +
                                (point.at.y - middle.y) * point.outwards.y) /
                               distance(point.at, middle);
        EXPECT_GT(towards, 0.9);
        EXPECT_LT(point.outwards.y, 0);
        leftmost = std::min(leftmost, point.at.x);
        rightmost = std::max(rightmost, point.at.x);
    }
    EXPECT_GT(rightmost - leftmost, 0.8 * outline->width);
}

TEST(HeadOutline, ItsShouldersFallOffToBothSides) {
    const auto outline = head_outline(from_behind());
    ASSERT_TRUE(outline);
    for (const int side : {0, 1}) {
        const OutlinePart& shoulder = outline->shoulders[static_cast<std::size_t>(side)];
        ASSERT_GT(shoulder.size(), 20U);
        for (const OutlinePoint& point : shoulder) {
            EXPECT_EQ(point.at.x < 0.375, side == 0);
            EXPECT_LT(point.outwards.y, -0.3);
        }
        EXPECT_LT(shoulder.front().at.x, shoulder.back().at.x);
    }
}

TEST(HeadOutline, IsNotToldWhereTheHeadIsCutOff) {
    EXPECT_FALSE(head_outline(from_behind({192, 60})));
}

TEST(HeadOutline, IsNotToldWithoutAHead) {
    EXPECT_FALSE(head_outline(cv::Mat(512, 384, CV_8UC3, cv::Scalar(205, 210, 215))));
}

}  // namespace
}  // namespace quarterturn
