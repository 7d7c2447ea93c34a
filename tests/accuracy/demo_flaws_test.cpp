// Flaws found in the demo photos, whose truth is known, and in flaws of other strengths made from
// the good ones: at least 95 of 100 flawed photos are found, and at most 2 of 100 good ones
// accused.

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "indexer/image/measure.h"
#include "indexer/rules/flaws.h"
#include "tests/support/demo_truth.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {
namespace {

struct Count {
    int right = 0;
    int wrong = 0;
    std::string which;

    void add(bool is_right, const std::string& name) {
        ++(is_right ? right : wrong);
        if (!is_right) which += " " + name;
    }
    double share() const { return static_cast<double>(right) / std::max(1, right + wrong); }
};

std::vector<Flaw> flaws_of(const cv::Mat& picture) {
    return judge_flaws(measure(picture), 1500, 2000);
}

// The committed photos are 2000 pixels high and measured at half of that.
constexpr double scale = 0.5;

cv::Mat in_light(const cv::Mat& bgr) {
    cv::Mat light;
    bgr.convertTo(light, CV_32FC3, 1 / 255.0);
    cv::pow(light, 2.2, light);
    return light;
}

cv::Mat as_picture(const cv::Mat& light) {
    cv::Mat bgr;
    cv::pow(cv::min(light, 1.0), 1 / 2.2, bgr);
    bgr.convertTo(bgr, CV_8UC3, 255);
    return bgr;
}

cv::Mat blurred_by(const cv::Mat& light, const cv::Mat& kernel) {
    cv::Mat blurred;
    cv::filter2D(light, blurred, -1, kernel / cv::sum(kernel)[0], {-1, -1}, 0, cv::BORDER_REFLECT);
    return blurred;
}

// What a point becomes out of focus, and on the move.
cv::Mat disc(double radius) {
    const int half = static_cast<int>(std::ceil(radius));
    cv::Mat kernel = cv::Mat::zeros(2 * half + 1, 2 * half + 1, CV_32F);
    for (int y = -half; y <= half; ++y) {
        for (int x = -half; x <= half; ++x) {
            kernel.at<float>(y + half, x + half) =
                static_cast<float>(std::clamp(radius + 0.5 - std::hypot(x, y), 0.0, 1.0));
        }
    }
    return kernel;
}

cv::Mat trail(double length, double angle) {
    const int half = static_cast<int>(length / 2) + 1;
    cv::Mat kernel = cv::Mat::zeros(2 * half + 1, 2 * half + 1, CV_32F);
    for (double along = -length / 2; along <= length / 2; along += 0.1) {
        kernel.at<float>(half + cvRound(along * std::sin(angle)),
                         half + cvRound(along * std::cos(angle))) += 1;
    }
    return kernel;
}

// Draws numbers from a range, the same ones every time.
class Draw {
  public:
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(random_()) / 4294967296.0;
    }

  private:
    std::mt19937 random_{20261107};
};

// `light` with a flaw of a strength around that of the committed photos.
cv::Mat with_flaw(const cv::Mat& light, Flaw flaw, Draw& draw) {
    switch (flaw) {
        case Flaw::out_of_focus:
            return blurred_by(light, disc(scale * draw.between(12, 28)));
        case Flaw::moved:
            return blurred_by(
                light, trail(scale * draw.between(40, 100), draw.between(0, std::numbers::pi)));
        case Flaw::too_dark:
            return light * std::exp2(draw.between(-4.5, -3.2));
        default:
            return light * std::exp2(draw.between(2.5, 3.5));
    }
}

TEST(DemoFlaws, are_found_and_the_good_photos_left_alone) {
    Count found;
    Count of_right_kind;
    Count left_alone;
    for (const auto& row : demo_truth()) {
        const auto flaws = flaws_of(demo_picture(row, measuring_edge));
        const auto truth = parse_flaw(row.at("flaw"));
        if (!truth) {
            left_alone.add(flaws.empty(), row.at("file"));
            continue;
        }
        found.add(!flaws.empty(), row.at("file"));
        of_right_kind.add(flaws == std::vector{*truth}, row.at("file"));
    }
    ASSERT_GE(found.right + found.wrong, 10);
    ASSERT_GE(left_alone.right + left_alone.wrong, 40);
    EXPECT_GE(found.share(), 0.95) << "not found:" << found.which;
    EXPECT_GE(of_right_kind.share(), 0.9) << "found as another kind:" << of_right_kind.which;
    EXPECT_GE(left_alone.share(), 0.98) << "wrongly accused:" << left_alone.which;
}

TEST(DemoFlaws, of_other_strengths_and_directions_are_found_too) {
    Draw draw;
    std::map<Flaw, Count> found;
    std::map<Flaw, Count> of_right_kind;
    for (const auto& row : demo_truth()) {
        // A photo that is soft already would be blurred twice.
        if (row.at("flaw") != "none" || !row.at("burst").empty()) continue;
        const cv::Mat light = in_light(demo_picture(row, measuring_edge));
        for (const Flaw flaw : {Flaw::out_of_focus, Flaw::moved, Flaw::too_dark, Flaw::blown_out}) {
            const auto flaws = flaws_of(as_picture(with_flaw(light, flaw, draw)));
            found[flaw].add(!flaws.empty(), row.at("file"));
            of_right_kind[flaw].add(std::ranges::find(flaws, flaw) != flaws.end(), row.at("file"));
        }
    }
    for (const auto& [flaw, count] : found) {
        EXPECT_GE(count.share(), 0.95) << word(flaw) << ", not found:" << count.which;
    }
    for (const auto& [flaw, count] : of_right_kind) {
        EXPECT_GE(count.share(), 0.9) << word(flaw) << ", found as another:" << count.which;
    }
}

TEST(DemoFlaws, a_little_softness_or_another_light_is_no_flaw) {
    Draw draw;
    Count left_alone;
    for (const auto& row : demo_truth()) {
        if (row.at("flaw") != "none" || !row.at("burst").empty()) continue;
        cv::Mat light = in_light(demo_picture(row, measuring_edge));
        cv::GaussianBlur(light, light, {}, scale * draw.between(0.3, 2.4));
        const cv::Mat picture = as_picture(light * std::exp2(draw.between(-0.7, 0.3)));
        left_alone.add(flaws_of(picture).empty(), row.at("file"));
    }
    EXPECT_GE(left_alone.share(), 0.98) << "wrongly accused:" << left_alone.which;
}

// The burst's true softness grows in this order (demo_photos/story/shots.cpp).
TEST(DemoFlaws, the_sharpest_of_a_burst_has_the_highest_focus) {
    const std::vector<int> sharpest_first{2, 0, 4, 1, 3};
    std::vector<double> focus;
    for (const auto& row : demo_truth()) {
        if (!row.at("burst").empty())
            focus.push_back(measure(demo_picture(row, measuring_edge)).focus);
    }
    ASSERT_EQ(focus.size(), sharpest_first.size());
    for (std::size_t i = 1; i < focus.size(); ++i) {
        EXPECT_GT(focus[static_cast<std::size_t>(sharpest_first[i - 1])],
                  focus[static_cast<std::size_t>(sharpest_first[i])])
            << "place " << i;
    }
}

}  // namespace
}  // namespace quarterturn
