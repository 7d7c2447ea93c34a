#include "indexer/rules/fair_pair.h"

#include <gtest/gtest.h>

namespace quarterturn {
namespace {

using Sentences = std::vector<std::string>;

TEST(FairPair, SaysNothingAgainstPhotosTakenAlike) {
    const Fairness fairness = judge_fairness({PairFigures::Light{0.02, 0.4, false}, 1.2, -1.4});
    EXPECT_EQ(fairness.unfair, Sentences{});
    EXPECT_EQ(fairness.figures,
              (Sentences{"Both photos are equally bright.",
                         "The colour of the light differs by ΔE00 0.4 on the background.",
                         "The head is 1.2 times as large in the second photo.",
                         "The camera was turned by 1° between the two."}));
}

TEST(FairPair, NamesEveryFigureThatIsTooLarge) {
    const Fairness fairness = judge_fairness({PairFigures::Light{-0.5, 4.13, true}, 0.5, 6.0});
    EXPECT_EQ(fairness.unfair,
              (Sentences{"The second photo is at least 0.5 EV darker.",
                         "The light has another colour in the second photo, by at least ΔE00 4.1 "
                         "on the background.",
                         "The head is 2.0 times as large in the first photo: the camera stood "
                         "nearer, or the picture was cropped.",
                         "The camera was turned by 6° between the two."}));
    EXPECT_EQ(fairness.figures, fairness.unfair);
}

TEST(FairPair, SaysWhatCannotBeTold) {
    const Fairness fairness = judge_fairness({});
    EXPECT_EQ(fairness.unfair, Sentences{});
    EXPECT_EQ(fairness.figures,
              (Sentences{"How the light differs cannot be told: too little background shows.",
                         "How near the camera stood cannot be told.",
                         "How the camera was turned cannot be told."}));
}

TEST(FairPair, DoesNotCallNothingADifference) {
    const Fairness fairness = judge_fairness({PairFigures::Light{0.0, 0.04, true}, 1.0, 0.0});
    EXPECT_EQ(fairness.unfair, Sentences{});
    EXPECT_EQ(fairness.figures[1],
              "The colour of the light is the same, as far as the background shows.");
}

TEST(FairPair, TellsThoseWhoLookInFewWordsWhatWasNotTakenAlike) {
    EXPECT_EQ(not_taken_alike({PairFigures::Light{0.1, 0.4, false}, 1.2, -1.4}), "");
    EXPECT_EQ(not_taken_alike({PairFigures::Light{0.1, 4.2, true}, {}, {}}),
              "Not taken alike: light.");
    EXPECT_EQ(not_taken_alike({PairFigures::Light{-0.5, 4.2, true}, 0.5, 6.0}),
              "Not taken alike: light, distance, tilt.");
}

TEST(FairPair, BeginsExactlyAtItsBounds) {
    const auto count = [](const PairFigures& figures) {
        return judge_fairness(figures).unfair.size();
    };
    EXPECT_EQ(count({PairFigures::Light{0.32, 1.9, false}, 1.49, 4.9}), 0U);
    EXPECT_EQ(count({PairFigures::Light{0.33, 2.0, false}, 1.5, -5.0}), 4U);
}

}  // namespace
}  // namespace quarterturn
