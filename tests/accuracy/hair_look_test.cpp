// "More like this" on pictures whose head is known: the demo photos, and generated heads in other
// light, before other backgrounds and from places near by. A query is one picture; those of the
// same hairdo are to come before all others from that angle. Beside it, what a histogram of the
// colours in the head's rectangle alone would answer (8 × 8 × 8 in L*a*b*, Bhattacharyya).

#include "indexer/image/hair_look.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <opencv2/imgproc.hpp>

#include "demo_photos/picture/develop.h"
#include "demo_photos/story/angles.h"
#include "indexer/rules/likeness.h"
#include "tests/support/demo_truth.h"

namespace quarterturn {
namespace {

struct Example {
    std::string hairdo;
    std::string angle;
    HairLook look;
    cv::Mat histogram;
};

struct Score {
    int queries = 0;
    int same_first = 0;

    double share() const { return static_cast<double>(same_first) / queries; }
    Score operator+(const Score& other) const {
        return {queries + other.queries, same_first + other.same_first};
    }
};

class Examples {
  public:
    void add(const std::string& hairdo, const std::string& angle, const cv::Mat& bgr) {
        const HairLook look = describe_hair(finder_, bgr);
        if (!look.told()) return;
        const cv::Rect head = finder_.head(bgr).value_or(cv::Rect({0, 0}, bgr.size()));
        examples_.push_back({hairdo, angle, look, histogram_of(bgr(head))});
    }

    Score score(auto distance) const {
        Score score;
        for (const Example& query : examples_) {
            double farthest_same = -1;
            double nearest_other = 1e9;
            for (const Example& other : examples_) {
                if (&other == &query || other.angle != query.angle) continue;
                const double apart = distance(query, other);
                if (other.hairdo == query.hairdo) {
                    farthest_same = std::max(farthest_same, apart);
                } else {
                    nearest_other = std::min(nearest_other, apart);
                }
            }
            if (farthest_same < 0 || nearest_other == 1e9) continue;
            ++score.queries;
            score.same_first += farthest_same < nearest_other ? 1 : 0;
        }
        return score;
    }

    Score by_look() const {
        return score([](const Example& one, const Example& other) {
            return distance_between(one.look, other.look).whole();
        });
    }
    Score by_histogram() const {
        return score([](const Example& one, const Example& other) {
            return cv::compareHist(one.histogram, other.histogram, cv::HISTCMP_BHATTACHARYYA);
        });
    }

  private:
    static cv::Mat histogram_of(const cv::Mat& bgr) {
        cv::Mat lab, histogram;
        cv::cvtColor(bgr, lab, cv::COLOR_BGR2Lab);
        const int channels[] = {0, 1, 2};
        const int bins[] = {8, 8, 8};
        const float range[] = {0, 256};
        const float* ranges[] = {range, range, range};
        cv::calcHist(&lab, 1, channels, {}, histogram, 3, bins, ranges);
        return histogram / static_cast<double>(lab.total());
    }

    HeadFinder finder_;
    std::vector<Example> examples_;
};

Examples demo_examples() {
    Examples examples;
    for (const auto& row : demo_truth()) {
        const bool fit =
            !row.at("client").empty() && row.at("flaw") == "none" && row.at("angle") != "detail";
        if (!fit) continue;
        cv::Mat bgr = demo_picture(row, 512);
        const double smaller = 512.0 / std::max(bgr.cols, bgr.rows);
        if (smaller < 1) cv::resize(bgr, bgr, {}, smaller, smaller, cv::INTER_AREA);
        if (row.at("mirrored") == "1") cv::flip(bgr, bgr, 1);
        examples.add(row.at("look") + ' ' + row.at("stage"), row.at("angle"), bgr);
    }
    return examples;
}

// As it is; darker and warmer with the lamp moved; colder before another wall.
struct Variation {
    demo::Lighting light;
    demo::Develop develop;
};

Variation variation(int number) {
    Variation result;
    result.develop.seed = static_cast<std::uint32_t>(number) + 1;
    result.develop.exposure_ev = -0.2F;
    if (number == 1) {
        result.develop.exposure_ev = -0.6F;
        result.develop.warmth = 0.3F;
        result.light.key_from_deg = -10;
        result.light.backdrop.seed = 5;
    }
    if (number == 2) {
        result.develop.exposure_ev = 0.1F;
        result.develop.warmth = -0.3F;
        result.light.backdrop.seed = 9;
        result.light.backdrop.window_at = 0.9F;
        result.light.backdrop.wall = {0.30F, 0.36F, 0.42F};
    }
    return result;
}

Examples generated_examples() {
    Examples examples;
    for (const auto who : {demo::Who::a, demo::Who::b, demo::Who::c}) {
        for (const auto style : {demo::Style::low_bun, demo::Style::waves_down}) {
            demo::Head head(demo::sitter_for(who, style), 0.3F);
            const std::string hairdo =
                std::to_string(static_cast<int>(who)) + std::to_string(static_cast<int>(style));
            for (const char* angle : {"front", "left", "back"}) {
                for (int number = 0; number < 3; ++number) {
                    const auto place = static_cast<std::uint32_t>(10 + number * 7);
                    const auto view = demo::view_for(angle, who, style, place);
                    const auto [light, how] = variation(number);
                    examples.add(hairdo, angle,
                                 develop(head.photograph(view, light, {240, 320}).linear, how));
                }
            }
        }
    }
    return examples;
}

void print(const char* what, const Score& look, const Score& histogram) {
    std::printf(
        "%s: of %d queries, the same hairdo first in %.0f %%; by a colour histogram alone "
        "in %.0f %%\n",
        what, look.queries, 100 * look.share(), 100 * histogram.share());
}

TEST(HairLook, PutsTheSameHairdoBeforeOthers) {
    const Examples demo = demo_examples();
    const Examples generated = generated_examples();
    const Score demo_look = demo.by_look();
    const Score demo_histogram = demo.by_histogram();
    const Score generated_look = generated.by_look();
    const Score generated_histogram = generated.by_histogram();
    const Score look = demo_look + generated_look;
    const Score histogram = demo_histogram + generated_histogram;
    print("demo photos", demo_look, demo_histogram);
    print("generated", generated_look, generated_histogram);
    print("together", look, histogram);
    EXPECT_GE(demo_look.queries, 20);
    EXPECT_GE(generated_look.queries, 50);
    EXPECT_GE(look.share(), 0.9);
    EXPECT_GT(look.share(), histogram.share() + 0.2);
}

TEST(HairLook, IsNotToldWithoutAHead) {
    HeadFinder finder;
    EXPECT_FALSE(describe_hair(finder, {}).told());
    EXPECT_FALSE(
        describe_hair(finder, cv::Mat(300, 200, CV_8UC3, cv::Scalar(120, 130, 140))).told());
    EXPECT_FALSE(describe_hair(finder, cv::Mat(5, 5, CV_8UC3, cv::Scalar(120, 130, 140))).told());
}

}  // namespace
}  // namespace quarterturn
