// Against demo photos that show no difference, and one with hair drawn on the crown.

#include "indexer/image/hair_height.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <opencv2/imgproc.hpp>

#include "tests/support/demo_truth.h"

namespace quarterturn {
namespace {

HairHeight measured_height(const cv::Mat& first, const cv::Mat& second) {
    HeadFinder finder;
    const HeadAlignment alignment = align_heads(finder, {first, {}}, {second, {}});
    return hair_height(first, second, alignment, likely_points(finder, first));
}

TEST(HairHeightOfHeads, StaysSilentWhereNothingDiffers) {
    std::vector<std::pair<CsvRow, cv::Mat>> photos;
    for (const CsvRow& row : demo_truth()) {
        if (row.at("stage") != "after" || row.at("angle") == "detail") continue;
        if (row.at("flaw") != "none") continue;
        photos.emplace_back(row, demo_picture(row, 512));
        if (row.at("mirrored") == "1") cv::flip(photos.back().second, photos.back().second, 1);
    }
    int pairs = 0;
    for (std::size_t i = 0; i < photos.size(); ++i) {
        for (std::size_t j = i + 1; j < photos.size(); ++j) {
            const auto& [one, first] = photos[i];
            const auto& [other, second] = photos[j];
            if (one.at("look") != other.at("look") || one.at("angle") != other.at("angle"))
                continue;
            const HairHeight height = measured_height(first, second);
            ASSERT_TRUE(height.centimetres.has_value());
            EXPECT_FALSE(height.differs())
                << one.at("file") << " and " << other.at("file") << ": " << *height.centimetres;
            ++pairs;
        }
    }
    EXPECT_GE(pairs, 20);
}

// A bump drawn on the crown of a demo photo, in its own hair's colour.
TEST(HairHeightOfHeads, TellsABunOnTheCrown) {
    const auto rows = demo_truth();
    const auto row = std::ranges::find_if(rows, [](const CsvRow& each) {
        return each.at("file") == "phone/20260822_153044_back.jpg";
    });
    ASSERT_NE(row, rows.end());
    const cv::Mat first = demo_picture(*row, 512);
    const double to_pixels = first.rows / std::stod(row->at("height"));
    const double centimetre = first.rows / std::stod(row->at("frame_cm"));
    const cv::Point top(cvRound(std::stod(row->at("head_top_x")) * to_pixels),
                        cvRound(std::stod(row->at("head_top_y")) * to_pixels));
    cv::Mat second = first.clone();
    constexpr double higher = 2.5;  // cm
    cv::ellipse(second, top, {cvRound(4 * centimetre), cvRound(higher * centimetre)}, 0, 0, 360,
                cv::Scalar(20, 22, 26), cv::FILLED, cv::LINE_AA);
    const HairHeight height = measured_height(first, second);
    ASSERT_TRUE(height.differs());
    EXPECT_NEAR(*height.centimetres, higher, 0.7);
    const HairHeight lower = measured_height(second, first);
    ASSERT_TRUE(lower.differs());
    EXPECT_NEAR(*lower.centimetres, -higher, 0.7);
}

TEST(HairHeightOfHeads, CannotBeToldWhereNothingStandsOut) {
    const cv::Mat plain(400, 300, CV_8UC3, cv::Scalar::all(128));
    const HairHeight height = hair_height(plain, plain, {}, {{0.5, 0.2}, {0.5, 0.6}});
    EXPECT_FALSE(height.differs());
}

}  // namespace
}  // namespace quarterturn
