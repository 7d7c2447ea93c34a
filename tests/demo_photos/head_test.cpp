// Small renders: left and right must be the client's own.

#include "demo_photos/head.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <opencv2/imgproc.hpp>
#include <set>

#include "demo_photos/picture/develop.h"
#include "demo_photos/story/shots.h"

namespace quarterturn::demo {
namespace {

const cv::Size small{150, 200};

Head& ceremony_head() {
    static Head head(sitter_for(Who::a, Style::low_bun), 0.1F);
    return head;
}

View view_from(float azimuth, float elevation = 4.0F) {
    View view;
    view.azimuth_deg = azimuth;
    view.elevation_deg = elevation;
    view.frame_cm = 40.0F;
    view.target = {0.0F, 0.0F, 0.0F};
    return view;
}

cv::Mat photo(float azimuth) {
    return develop(ceremony_head().photograph(view_from(azimuth), {}, small).linear, {});
}

// Gold leaves: bright and clearly yellower than skin, hair or wall.
int gold(const cv::Mat& bgr, const cv::Rect& where) {
    cv::Mat hsv;
    cv::cvtColor(bgr(where), hsv, cv::COLOR_BGR2HSV);
    cv::Mat mask;
    cv::inRange(hsv, cv::Scalar(18, 70, 110), cv::Scalar(30, 255, 255), mask);
    return cv::countNonZero(mask);
}

// One test, since the head takes seconds to build and every test runs in a program of its own.
TEST(TrainingHead, HasItsOwnLeftAndRightFromEverySide) {
    const cv::Mat front = photo(0.0F);
    const cv::Mat left = photo(90.0F);
    const cv::Mat right = photo(-90.0F);

    // The comb is on her left: the viewer's right from the front, and out of sight from her right.
    const cv::Rect upper_left(0, 20, 60, 70);
    const cv::Rect upper_right(90, 20, 60, 70);
    const cv::Rect middle(20, 20, 110, 80);
    EXPECT_GT(gold(front, upper_right), gold(front, upper_left) + 5);
    EXPECT_GT(gold(left, middle), gold(right, middle) + 20);

    // The two sides are no mirror images of each other.
    cv::Mat flipped;
    cv::flip(right, flipped, 1);
    EXPECT_GT(cv::norm(left, flipped, cv::NORM_L1) / (150.0 * 200.0 * 3.0), 4.0);

    // Seen from her left she looks to the viewer's left.
    const Marks from_left = ceremony_head().photograph(view_from(90.0F), {}, small).marks;
    EXPECT_LT(from_left.head_bottom.x, from_left.head_top.x);
    EXPECT_LT(from_left.head_top.y, from_left.head_bottom.y);
    EXPECT_TRUE(from_left.face_visible);

    // From behind and from above there is no face; from above, the brow is at the top.
    EXPECT_FALSE(ceremony_head().photograph(view_from(180.0F), {}, small).marks.face_visible);
    const Marks above = ceremony_head().photograph(view_from(180.0F, 66.0F), {}, small).marks;
    EXPECT_FALSE(above.face_visible);
    EXPECT_LT(above.head_top.y, above.head_bottom.y);

    EXPECT_EQ(cv::norm(front, photo(0.0F), cv::NORM_INF), 0.0) << "The same photo twice";
}

TEST(Shots, HaveNamesOfTheirOwn) {
    std::set<std::string> names;
    for (const Shot& shot : all_shots())
        names.insert(std::filesystem::path(shot.file).filename().string());
    EXPECT_EQ(names.size(), all_shots().size());
}

}  // namespace
}  // namespace quarterturn::demo
