#include "indexer/image/head_matching.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "indexer/image/slopes.h"

namespace quarterturn {
namespace {

// Long edges of the pictures that are compared, from coarse to fine, in pixels.
constexpr int coarse = 64;
constexpr int coarse_part = 96;  // where only a part of the head counts
constexpr int middling = 160;
constexpr int fine = 256;

constexpr double furthest_turn = 0.25;  // radians: a camera is held upright, more or less

// What is sought: how the second head differs from where it was thought to be.
struct Guess {
    double log_scale = 0;
    double turn = 0;   // radians
    double right = 0;  // in heights of the first head
    double down = 0;
    double agreement = -2;
};

// Tries guesses at one size of the pictures.
class Matching {
  public:
    Matching(const cv::Mat& first, const cv::Mat& second, const HeadPlace& first_head,
             const HeadPlace& second_head, const cv::Mat& counts)
        : first_(first),
          second_(second),
          first_head_(first_head),
          second_head_(second_head),
          counts_(counts) {}

    void look_at(int long_edge) {
        const cv::Mat one = with_long_edge(first_, long_edge);
        const cv::Mat other = with_long_edge(second_, long_edge);
        first_slopes_ = slopes_of(one);
        second_slopes_ = slopes_of(other);
        first_height_ = one.rows;
        second_height_ = other.rows;
        weigh(one.size());
    }

    Similarity similarity(const Guess& guess) const {
        const double scale = std::exp(guess.log_scale);
        Similarity lay{scale * std::cos(guess.turn), scale * std::sin(guess.turn), 0, 0};
        const Spot there = lay(second_head_.middle);
        lay.x = first_head_.middle.x + guess.right * first_head_.height - there.x;
        lay.y = first_head_.middle.y + guess.down * first_head_.height - there.y;
        return lay;
    }

    // Goes uphill from a guess by ever smaller steps.
    Guess climb(Guess guess, double step, double least_step) const {
        guess.agreement = judge(guess);
        while (step > least_step) {
            const Guess better = best_beside(guess, step);
            if (better.agreement > guess.agreement) {
                guess = better;
            } else {
                step /= 2;
            }
        }
        return guess;
    }

  private:
    void weigh(cv::Size size) {
        if (counts_.empty()) return weigh_head(size);
        cv::resize(counts_, weight_, size, 0, 0, cv::INTER_AREA);
        weight_.convertTo(weight_, CV_32F, 1 / 255.0);
        cv::GaussianBlur(weight_, weight_, {}, std::max(0.3, size.height / 256.0));
    }

    // The head with hair that hangs and the shoulders beneath it; not the room behind.
    void weigh_head(cv::Size size) {
        const double width = first_head_.width;
        const double height = first_head_.height;
        const Spot corner{first_head_.middle.x - 0.65 * width,
                          first_head_.middle.y - 0.75 * height};
        weight_ = cv::Mat::zeros(size, CV_32FC1);
        cv::rectangle(
            weight_,
            cv::Rect(cvRound(corner.x * first_height_), cvRound(corner.y * first_height_),
                     cvRound(1.3 * width * first_height_), cvRound(1.6 * height * first_height_)),
            1, cv::FILLED);
        cv::GaussianBlur(weight_, weight_, {}, 3);
    }

    double judge(const Guess& guess) const {
        const Similarity lay = similarity(guess);
        const double scale = first_height_ / second_height_;
        return agreement(first_slopes_, second_slopes_,
                         {lay.along * scale, -lay.across * scale, lay.x * first_height_,
                          lay.across * scale, lay.along * scale, lay.y * first_height_},
                         weight_);
    }

    Guess best_beside(const Guess& guess, double step) const {
        constexpr std::array members{&Guess::log_scale, &Guess::turn, &Guess::right, &Guess::down};
        Guess best = guess;
        for (double Guess::*member : members) {
            for (const double by : {-step, step}) {
                Guess beside = best;
                beside.*member += by;
                if (std::abs(beside.turn) > furthest_turn) continue;
                beside.agreement = judge(beside);
                if (beside.agreement > best.agreement) best = beside;
            }
        }
        return best;
    }

    const cv::Mat& first_;
    const cv::Mat& second_;
    HeadPlace first_head_;
    HeadPlace second_head_;
    const cv::Mat& counts_;
    Slopes first_slopes_;
    Slopes second_slopes_;
    double first_height_ = 0;
    double second_height_ = 0;
    cv::Mat weight_;
};

// Around the heads as found, which may be off by a third where hair hangs down.
std::vector<Guess> first_guesses(const HeadPlace& first, const HeadPlace& second) {
    const double scale = std::sqrt(first.width * first.height / (second.width * second.height));
    std::vector<Guess> guesses;
    for (int larger = -3; larger <= 3; ++larger) {
        for (int lower = -1; lower <= 1; ++lower) {
            guesses.push_back({.log_scale = std::log(scale) + 0.12 * larger, .down = 0.15 * lower});
        }
    }
    return guesses;
}

}  // namespace

cv::Mat with_long_edge(const cv::Mat& bgr, int long_edge) {
    const double scale = static_cast<double>(long_edge) / std::max(bgr.cols, bgr.rows);
    cv::Mat resized;
    cv::resize(bgr, resized, {}, scale, scale, scale < 1 ? cv::INTER_AREA : cv::INTER_LINEAR);
    return resized;
}

LaidHead lay_head(const cv::Mat& first, const cv::Mat& second, const HeadPlace& first_place,
                  const HeadPlace& second_place, const cv::Mat& weight) {
    constexpr int kept = 3;
    Matching matching(first, second, first_place, second_place, weight);
    std::vector<Guess> guesses = first_guesses(first_place, second_place);
    matching.look_at(weight.empty() ? coarse : coarse_part);
    for (Guess& guess : guesses) guess = matching.climb(guess, 0.08, 0.02);
    std::ranges::sort(guesses, std::ranges::greater{}, &Guess::agreement);
    matching.look_at(middling);
    guesses.resize(kept);
    for (Guess& guess : guesses) guess = matching.climb(guess, 0.03, 0.004);
    const Guess best = *std::ranges::max_element(guesses, {}, &Guess::agreement);
    matching.look_at(fine);
    const Guess exact = matching.climb(best, 0.005, 0.0008);
    return {matching.similarity(exact), exact.agreement};
}

}  // namespace quarterturn
