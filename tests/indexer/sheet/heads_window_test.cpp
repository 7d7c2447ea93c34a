// What a picture of a pair shows: both heads whole at one scale, and how much stays empty for it.

#include "indexer/sheet/heads_window.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

// Upright photos of 3:4 with a head of so much of their height, the second laid as it is.
LaidPair laid_pair(double top, double bottom) {
    LaidPair pair;
    pair.first_aspect = pair.second_aspect = 0.75;
    pair.alignment.certain = true;
    pair.first_points = pair.second_points = {{0.5, top}, {0.5, bottom}};
    return pair;
}

// From the top of the hair to the chin, and as wide as a head is at least.
bool surrounds(const Box& window, double middle, double top, double bottom) {
    constexpr double hairbreadth = 1e-6;
    const double half = 0.85 * (bottom - top) / 2;
    return window.y < top + hairbreadth && window.y + window.height > bottom - hairbreadth &&
           window.x < middle - half + hairbreadth &&
           window.x + window.width > middle + half - hairbreadth;
}

constexpr double shapes[] = {0.28, 0.4, 0.5, 0.71, 0.8, 1.0, 1.12, 1.6, 2.0, 2.4};

TEST(HeadsWindow, HoldsTheWholeHeadInEveryShape) {
    for (const double aspect : shapes) {
        for (const double height : {0.2, 0.35, 0.5, 0.62}) {
            const LaidPair pair = laid_pair(0.2, 0.2 + height);
            const HeadsWindow shown = window_of_both_heads(pair, aspect);
            EXPECT_TRUE(surrounds(shown.window, 0.375, 0.2, 0.2 + height))
                << aspect << ' ' << height;
            EXPECT_NEAR(shown.window.width / shown.window.height, aspect, 1e-9) << "not stretched";
        }
    }
}

TEST(HeadsWindow, LeavesNothingEmptyWhereTheShapeAllows) {
    for (const double aspect : {0.5, 0.71, 0.8, 1.0}) {
        EXPECT_EQ(window_of_both_heads(laid_pair(0.2, 0.6), aspect).most_empty(), 0) << aspect;
    }
}

// A head of 0.5 needs 0.53 with its air, and twice as much in width: 1.06, of which 0.75 is photo.
TEST(HeadsWindow, SaysHowMuchStaysEmptyWhereTheHeadGoesFirst) {
    const HeadsWindow shown = window_of_both_heads(laid_pair(0.2, 0.7), 2);
    EXPECT_NEAR(shown.most_empty(), 1 - 0.75 / 1.06, 0.03);
    EXPECT_NEAR(shown.empty[0], shown.empty[1], 0.03);
}

// The second photo's head was taken from nearer, stands lower and has its hair put up higher.
TEST(HeadsWindow, HoldsBothHeads) {
    LaidPair pair = laid_pair(0.25, 0.6);
    pair.alignment.second_onto_first = {0.8, 0, 0.1, 0.05};
    pair.second_points = {{0.45, 0.1}, {0.45, 0.75}};  // on the first: 0.13 and 0.65
    for (const double aspect : shapes) {
        const Box window = window_of_both_heads(pair, aspect).window;
        EXPECT_TRUE(surrounds(window, 0.375, 0.25, 0.6)) << aspect;
        EXPECT_LT(window.y, 0.13 + 1e-6) << aspect;
        EXPECT_GT(window.y + window.height, 0.65 - 1e-6) << aspect;
    }
}

}  // namespace
}  // namespace quarterturn
