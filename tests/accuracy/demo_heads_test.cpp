// Heads found in the demo photos, against where the renderer put them.

#include <gtest/gtest.h>

#include "indexer/image/head.h"
#include "indexer/rules/disagreement.h"
#include "tests/support/demo_truth.h"

namespace quarterturn {
namespace {

constexpr int edge = 512;

double overlap(const cv::Rect2d& one, const cv::Rect2d& other) {
    const double common = (one & other).area();
    return common / (one.area() + other.area() - common);
}

cv::Rect2d true_head(const CsvRow& row, const cv::Mat& picture) {
    const double shrunk = picture.cols / std::stod(row.at("width"));
    const auto number = [&](const std::string& column) {
        return shrunk * std::stod(row.at(column));
    };
    return {number("head_box_x"), number("head_box_y"), number("head_box_w"), number("head_box_h")};
}

TEST(DemoHeads, are_found_where_they_are_from_every_side) {
    HeadFinder finder;
    double sum = 0;
    int found = 0;
    int whole_heads = 0;
    for (const auto& row : demo_truth()) {
        const bool whole_head = row.at("angle") != "detail" && !row.at("head_box_w").empty();
        if (!whole_head || row.at("flaw") != "none") continue;
        ++whole_heads;
        const cv::Mat picture = demo_picture(row, edge);
        const auto head = finder.head(picture);
        if (!head) continue;
        const double agreement = overlap(*head, true_head(row, picture));
        EXPECT_GT(agreement, 0.6) << row.at("file") << ", " << row.at("angle");
        sum += agreement;
        ++found;
    }
    ASSERT_GT(whole_heads, 40);
    EXPECT_GE(found, 0.95 * whole_heads);
    EXPECT_GE(sum / found, 0.85);
}

TEST(DemoHeads, are_not_claimed_where_the_photo_shows_a_detail_or_no_head) {
    HeadFinder finder;
    for (const auto& row : demo_truth()) {
        if (row.at("angle") != "detail" && !row.at("head_box_w").empty()) continue;
        EXPECT_FALSE(finder.head(demo_picture(row, edge))) << row.at("file");
    }
}

// The demo's own tags are true, so a question about one is a false alarm.
TEST(DemoHeads, agree_with_true_tags_and_disagree_with_wrong_ones) {
    HeadFinder finder;
    int asked_of_true = 0;
    int asked_of_wrong = 0;
    int photos = 0;
    for (const auto& row : demo_truth()) {
        const auto angle = parse_angle(row.at("angle"));
        if (!angle || row.at("flaw") != "none" || row.at("face_visible") != "1") continue;
        if (*angle != Angle::front && *angle != Angle::left && *angle != Angle::right) continue;
        ++photos;
        Photo photo;
        photo.head_signs = finder.signs(demo_picture(row, edge));
        photo.tags.mirrored = row.at("mirrored") == "1";
        photo.tags.angle = *angle;
        asked_of_true += disagreement(photo).has_value() ? 1 : 0;
        photo.tags.angle = *angle == Angle::front ? Angle::back : mirrored(*angle);
        asked_of_wrong += disagreement(photo).has_value() ? 1 : 0;
    }
    ASSERT_GT(photos, 20);
    EXPECT_LE(asked_of_true, 0.05 * photos);
    EXPECT_GE(asked_of_wrong, 0.7 * photos) << "a profile is not always found";
}

TEST(HeadFinder, finds_nothing_in_a_plain_or_tiny_picture) {
    HeadFinder finder;
    EXPECT_FALSE(finder.head(cv::Mat(400, 300, CV_8UC3, cv::Scalar(180, 180, 180))));
    EXPECT_FALSE(finder.head(cv::Mat(20, 20, CV_8UC3, cv::Scalar(180, 180, 180))));
    EXPECT_EQ(finder.signs(cv::Mat(20, 20, CV_8UC3, cv::Scalar(180, 180, 180))), HeadSigns{});
    EXPECT_FALSE(finder.head({}));
    EXPECT_EQ(finder.signs({}), HeadSigns{});
}

}  // namespace
}  // namespace quarterturn
