#include "indexer/image/similarity.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <stdexcept>
#include <vector>

namespace quarterturn {
namespace {

double between(int low, int high, double unit) {
    return *rc::gen::inRange(low, high) * unit;
}

Similarity any_similarity() {
    const double factor = between(20, 500, 0.01);
    const double turn = between(-314, 314, 0.01);
    return {factor * std::cos(turn), factor * std::sin(turn), between(-200, 200, 0.01),
            between(-200, 200, 0.01)};
}

std::vector<Spot> any_spots() {
    std::vector<Spot> spots{{0, 0}, {1, 0.5}};
    const int more = *rc::gen::inRange(0, 5);
    for (int i = 0; i < more; ++i) spots.push_back({between(0, 100, 0.01), between(0, 100, 0.01)});
    return spots;
}

double remains(const Similarity& lay, const std::vector<Spot>& from,
               const std::vector<Spot>& onto) {
    double sum = 0;
    for (std::size_t i = 0; i < from.size(); ++i) {
        sum += std::pow(distance(lay(from[i]), onto[i]), 2);
    }
    return sum;
}

RC_GTEST_PROP(Similarity, IsFoundAgainFromWhatItDidToSpots, ()) {
    const Similarity lay = any_similarity();
    const auto from = any_spots();
    std::vector<Spot> onto;
    for (const Spot& spot : from) onto.push_back(lay(spot));
    const auto found = fit_similarity(from, onto);
    RC_ASSERT(found.has_value());
    for (std::size_t i = 0; i < from.size(); ++i) {
        RC_ASSERT(distance((*found)(from[i]), onto[i]) < 1e-9);
        RC_ASSERT(distance(found->inverse()(onto[i]), from[i]) < 1e-9);
    }
    RC_ASSERT(std::abs(found->scale() - lay.scale()) < 1e-9);
}

RC_GTEST_PROP(Similarity, NoneBesideItLeavesLess, ()) {
    const auto from = any_spots();
    std::vector<Spot> onto;
    for (const Spot& spot : from) {
        onto.push_back({spot.y + between(-20, 20, 0.01), -spot.x + between(-20, 20, 0.01)});
    }
    const auto found = fit_similarity(from, onto);
    RC_ASSERT(found.has_value());
    const double least = remains(*found, from, onto);
    for (double Similarity::*member :
         {&Similarity::along, &Similarity::across, &Similarity::x, &Similarity::y}) {
        for (const double by : {-0.01, 0.01}) {
            Similarity beside = *found;
            beside.*member += by;
            RC_ASSERT(remains(beside, from, onto) >= least - 1e-12);
        }
    }
}

TEST(SimilarityOfSpots, ThatFallTogetherIsNone) {
    const std::array same{Spot{1, 1}, Spot{1, 1}};
    const std::array apart{Spot{0, 0}, Spot{0, 1}};
    EXPECT_FALSE(fit_similarity(same, apart));
    EXPECT_FALSE(fit_similarity(apart, same));
    EXPECT_THROW(fit_similarity(apart, std::array{Spot{}}), std::invalid_argument);
}

}  // namespace
}  // namespace quarterturn
