#include "indexer/rules/head_points.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

TEST(HeadPointsOfAPhoto, StandOneAboveTheOther) {
    const HeadPoints upright{{0.5, 0.1}, {0.4, 0.6}};
    const HeadPoints turned{upright.bottom, upright.top};
    EXPECT_EQ(reason_against(upright, Angle::left), std::nullopt);
    EXPECT_EQ(reason_against(upright, std::nullopt), std::nullopt);
    ASSERT_TRUE(reason_against(turned, Angle::left));
    EXPECT_NE(reason_against(turned, std::nullopt)->find("wrong way round"), std::string::npos);
    const HeadPoints level{{0.2, 0.3}, {0.8, 0.3}};
    EXPECT_TRUE(reason_against(level, Angle::back));
}

TEST(HeadPointsOfAPhoto, LieAsFarApartAsAHeadIsHigh) {
    EXPECT_TRUE(reason_against({{0, 0}, {0.01, 0.01}}, Angle::front));
    EXPECT_TRUE(reason_against({{0.5, 0.4}, {0.5, 0.401}}, Angle::crown));
    EXPECT_EQ(reason_against({{0.5, 0.4}, {0.5, 0.45}}, Angle::front), std::nullopt);
}

TEST(HeadPointsOfAPair, ShowHeadsOfAboutOneSize) {
    EXPECT_EQ(reason_against_sizes(0.4, 0.1), std::nullopt);
    EXPECT_EQ(reason_against_sizes(0.1, 0.8), std::nullopt);
    EXPECT_TRUE(reason_against_sizes(0.02, 0.72));
    EXPECT_TRUE(reason_against_sizes(0.9, 0.1));
}

TEST(HeadPointsOfAPhoto, LieAnyWayRoundFromAboveButInTwoPlaces) {
    EXPECT_EQ(reason_against({{0.5, 0.6}, {0.4, 0.1}}, Angle::crown), std::nullopt);
    EXPECT_TRUE(reason_against({{0.5, 0.6}, {0.5, 0.6}}, Angle::crown));
}

}  // namespace
}  // namespace quarterturn
