// Against what is true of the demo photos: where the top of the hair and the chin or nape stand is
// known because the photos were made.

#include "indexer/image/head_alignment.h"

#include <gtest/gtest.h>

#include <cmath>
#include <opencv2/imgproc.hpp>

#include "tests/support/demo_truth.h"

namespace quarterturn {
namespace {

struct TruePhoto {
    CsvRow row;
    HeadPicture picture;
    HeadPoints truth;  // the right way round

    bool is_like(const TruePhoto& other) const {
        const auto same = [&](const char* column) {
            return row.at(column) == other.row.at(column);
        };
        return same("client") && same("look") && same("stage") && same("angle");
    }
};

PicturePoint true_point(const CsvRow& row, const std::string& name) {
    PicturePoint point{std::stod(row.at(name + "_x")) / std::stod(row.at("width")),
                       std::stod(row.at(name + "_y")) / std::stod(row.at("height"))};
    if (row.at("mirrored") == "1") point.x = 1 - point.x;
    return point;
}

// Without details, which show no whole head.
std::vector<TruePhoto> heads_of_the_demo() {
    std::vector<TruePhoto> photos;
    for (const CsvRow& row : demo_truth()) {
        if (row.at("angle").empty() || row.at("angle") == "detail") continue;
        TruePhoto photo{row, {demo_picture(row, 512), {}}, {}};
        if (row.at("mirrored") == "1") cv::flip(photo.picture.bgr, photo.picture.bgr, 1);
        photo.truth = {true_point(row, "head_top"), true_point(row, "head_bottom")};
        photos.push_back(std::move(photo));
    }
    return photos;
}

struct Errors {
    double size = 0;   // share of the head's height
    double place = 0;  // of the middle between top and chin or nape, in heights of the head
};

Errors errors_of(const Similarity& lay, const TruePhoto& first, const TruePhoto& second) {
    const auto spots = [](const TruePhoto& photo) {
        const double aspect = static_cast<double>(photo.picture.bgr.cols) / photo.picture.bgr.rows;
        return std::pair(spot_of(photo.truth.top, aspect), spot_of(photo.truth.bottom, aspect));
    };
    const auto [top, bottom] = spots(first);
    const auto [second_top, second_bottom] = spots(second);
    const Spot laid_top = lay(second_top);
    const Spot laid_bottom = lay(second_bottom);
    const double height = distance(top, bottom);
    const Spot middle{(top.x + bottom.x) / 2, (top.y + bottom.y) / 2};
    const Spot laid_middle{(laid_top.x + laid_bottom.x) / 2, (laid_top.y + laid_bottom.y) / 2};
    return {std::abs(distance(laid_top, laid_bottom) / height - 1),
            distance(middle, laid_middle) / height};
}

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

TEST(HeadAlignment, WhatIsLaidQuiteWronglyIsNotCalledSure) {
    HeadFinder finder;
    const auto photos = heads_of_the_demo();
    int pairs = 0;
    for (const TruePhoto& first : photos) {
        for (const TruePhoto& second : photos) {
            if (&second <= &first || first.is_like(second)) continue;
            if (first.row.at("client") != second.row.at("client")) continue;
            if (first.row.at("angle") != "back" || second.row.at("angle") != "back") continue;
            const HeadAlignment alignment = align_heads(finder, first.picture, second.picture);
            const auto [size, place] = errors_of(alignment.second_onto_first, first, second);
            if (size < 0.15) continue;
            EXPECT_FALSE(alignment.sure())
                << first.row.at("file") << " and " << second.row.at("file");
            ++pairs;
        }
    }
    EXPECT_GT(pairs, 0);
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
