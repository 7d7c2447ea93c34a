// Against demo photos that show no difference, and one with hair drawn on the crown.

#include "indexer/image/hair_height.h"

#include <gtest/gtest.h>

#include "tests/support/higher_hair.h"

namespace quarterturn {
namespace {

HairHeight measured_height(const cv::Mat& first, const cv::Mat& second) {
    HeadFinder finder;
    const HeadAlignment alignment = align_heads(finder, {first, {}}, {second, {}});
    return hair_height(first, second, alignment, likely_points(finder, first));
}

TEST(HairHeightOfHeads, StaysSilentWhereNothingDiffers) {
    int pairs = 0;
    for_alike_photos([&](const AlikePhoto& one, const AlikePhoto& other) {
        const HairHeight height = measured_height(one.picture, other.picture);
        ASSERT_TRUE(height.centimetres.has_value());
        EXPECT_FALSE(height.differs())
            << one.file() << " and " << other.file() << ": " << *height.centimetres;
        ++pairs;
    });
    EXPECT_GE(pairs, 20);
}

TEST(HairHeightOfHeads, TellsABunOnTheCrown) {
    const CsvRow row = demo_row("phone/20260822_153044_back.jpg");
    const cv::Mat first = demo_picture(row, 512);
    constexpr double higher = 2.5;  // cm
    const cv::Mat second = with_higher_hair(row, first, higher);
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
