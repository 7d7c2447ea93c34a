// Against what is true of the demo photos. Pairs with hair done otherwise are in
// before_and_after_alignment_test.cpp.

#include "indexer/image/head_alignment.h"

#include <gtest/gtest.h>

#include "tests/support/true_heads.h"

namespace quarterturn {
namespace {

TEST(HeadAlignment, EveryPairOfOneHairdoStandsEquallyLargeInTheSamePlace) {
    HeadFinder finder;
    const auto photos = heads_of_the_demo();
    int pairs = 0, of_trial_and_day = 0;
    for (const TruePhoto& first : photos) {
        for (const TruePhoto& second : photos) {
            if (&second <= &first || !first.is_like(second)) continue;
            const HeadAlignment alignment = align_heads(finder, first.picture, second.picture);
            const auto [size, place] = errors_of(alignment.second_onto_first, first, second);
            const std::string pair = first.row.at("file") + " and " + second.row.at("file");
            EXPECT_LT(size, 0.03) << pair;
            EXPECT_LT(place, 0.02) << pair;
            EXPECT_TRUE(alignment.sure()) << pair << ": " << alignment.agreement;
            ++pairs;
            of_trial_and_day += first.row.at("sitting") != second.row.at("sitting");
        }
    }
    EXPECT_EQ(pairs, 39);
    EXPECT_EQ(of_trial_and_day, 6);
}

TEST(HeadAlignment, PointsInBothPicturesSettleIt) {
    HeadFinder finder;
    HeadPicture first{cv::Mat(300, 200, CV_8UC3, cv::Scalar::all(120)),
                      HeadPoints{{0.5, 0.1}, {0.5, 0.5}}};
    HeadPicture second{cv::Mat(200, 200, CV_8UC3, cv::Scalar::all(90)),
                       HeadPoints{{0.3, 0.2}, {0.3, 0.4}}};
    const HeadAlignment alignment = align_heads(finder, first, second);
    EXPECT_TRUE(alignment.by_hand);
    const Spot top = alignment.second_onto_first(spot_of(second.points->top, 1));
    EXPECT_NEAR(top.x, 0.5 * 2 / 3, 1e-9);
    EXPECT_NEAR(top.y, 0.1, 1e-9);
    EXPECT_NEAR(alignment.second_onto_first.scale(), 2, 1e-9);
}

TEST(HeadAlignment, AnEmptyPictureIsRefused) {
    HeadFinder finder;
    EXPECT_THROW(align_heads(finder, {}, {}), std::invalid_argument);
}

}  // namespace
}  // namespace quarterturn
