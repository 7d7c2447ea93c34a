#include "indexer/image/head_alignment.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <stdexcept>
#include <utility>
#include <vector>

#include "indexer/image/slopes.h"

namespace quarterturn {
namespace {

// Long edges of the pictures that are compared, from coarse to fine, in pixels.
constexpr int coarse = 64;
constexpr int middling = 160;
constexpr int fine = 256;

constexpr double furthest_turn = 0.25;  // radians: a camera is held upright, more or less

// A head's place, in heights of the picture.
struct Head {
    Spot middle;
    double width = 0;
    double height = 0;
};

cv::Mat with_long_edge(const cv::Mat& bgr, int long_edge) {
    const double scale = static_cast<double>(long_edge) / std::max(bgr.cols, bgr.rows);
    cv::Mat resized;
    cv::resize(bgr, resized, {}, scale, scale, scale < 1 ? cv::INTER_AREA : cv::INTER_LINEAR);
    return resized;
}

double aspect_of(const cv::Mat& bgr) {
    return static_cast<double>(bgr.cols) / bgr.rows;
}

Head head_between(const HeadPoints& points, double aspect) {
    constexpr double width_of_height = 0.8;  // of the demo heads, all angles
    const Spot top = spot_of(points.top, aspect);
    const Spot bottom = spot_of(points.bottom, aspect);
    const double height = distance(top, bottom);
    return {{(top.x + bottom.x) / 2, (top.y + bottom.y) / 2}, width_of_height * height, height};
}

Head found_head(HeadFinder& finder, const cv::Mat& bgr) {
    const double height = bgr.rows;
    const auto found = finder.head(bgr);
    const cv::Rect2d head = found && !found->empty() ? cv::Rect2d(*found)
                                                     : cv::Rect2d(bgr.cols * 0.25, bgr.rows * 0.15,
                                                                  bgr.cols * 0.5, bgr.rows * 0.5);
    return {{(head.x + head.width / 2) / height, (head.y + head.height / 2) / height},
            head.width / height,
            head.height / height};
}

Head head_of(HeadFinder& finder, const HeadPicture& picture) {
    return picture.points ? head_between(*picture.points, aspect_of(picture.bgr))
                          : found_head(finder, with_long_edge(picture.bgr, fine));
}

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
    Matching(const HeadPicture& first, const HeadPicture& second, const Head& first_head,
             const Head& second_head)
        : first_(first), second_(second), first_head_(first_head), second_head_(second_head) {}

    void look_at(int long_edge) {
        const cv::Mat one = with_long_edge(first_.bgr, long_edge);
        const cv::Mat other = with_long_edge(second_.bgr, long_edge);
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
    // The head with hair that hangs and the shoulders beneath it; not the room behind.
    void weigh(cv::Size size) {
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

    const HeadPicture& first_;
    const HeadPicture& second_;
    Head first_head_;
    Head second_head_;
    Slopes first_slopes_;
    Slopes second_slopes_;
    double first_height_ = 0;
    double second_height_ = 0;
    cv::Mat weight_;
};

// Around the heads as found, which may be off by a third where hair hangs down.
std::vector<Guess> first_guesses(const Head& first, const Head& second) {
    const double scale = std::sqrt(first.width * first.height / (second.width * second.height));
    std::vector<Guess> guesses;
    for (int larger = -3; larger <= 3; ++larger) {
        for (int lower = -1; lower <= 1; ++lower) {
            guesses.push_back({.log_scale = std::log(scale) + 0.12 * larger, .down = 0.15 * lower});
        }
    }
    return guesses;
}

HeadAlignment search(HeadFinder& finder, const HeadPicture& first, const HeadPicture& second) {
    const Head first_head = head_of(finder, first);
    const Head second_head = head_of(finder, second);
    Matching matching(first, second, first_head, second_head);
    std::vector<Guess> guesses = first_guesses(first_head, second_head);
    matching.look_at(coarse);
    for (Guess& guess : guesses) guess = matching.climb(guess, 0.08, 0.02);
    std::ranges::sort(guesses, std::ranges::greater{}, &Guess::agreement);
    matching.look_at(middling);
    guesses.resize(3);
    for (Guess& guess : guesses) guess = matching.climb(guess, 0.03, 0.004);
    const Guess best = *std::ranges::max_element(guesses, {}, &Guess::agreement);
    matching.look_at(fine);
    const Guess exact = matching.climb(best, 0.005, 0.0008);
    return {matching.similarity(exact), exact.agreement, false};
}

std::optional<HeadAlignment> by_points(const HeadPicture& first, const HeadPicture& second) {
    if (!first.points || !second.points) return std::nullopt;
    const auto spots = [](const HeadPicture& picture) {
        const double aspect = aspect_of(picture.bgr);
        return std::array{spot_of(picture.points->top, aspect),
                          spot_of(picture.points->bottom, aspect)};
    };
    const auto lay = fit_similarity(spots(second), spots(first));
    if (!lay) return std::nullopt;
    return HeadAlignment{*lay, 1, true};
}

}  // namespace

HeadAlignment align_heads(HeadFinder& finder, const HeadPicture& first, const HeadPicture& second) {
    if (first.bgr.empty() || second.bgr.empty()) {
        throw std::invalid_argument("heads are aligned in two pictures, and one of them is empty");
    }
    if (const auto settled = by_points(first, second)) return *settled;
    return search(finder, first, second);
}

HeadPoints likely_points(HeadFinder& finder, const cv::Mat& bgr) {
    const Head head = found_head(finder, with_long_edge(bgr, fine));
    const double aspect = aspect_of(bgr);
    return {point_of({head.middle.x, head.middle.y - head.height / 2}, aspect),
            point_of({head.middle.x, head.middle.y + head.height / 2}, aspect)};
}

}  // namespace quarterturn
