#include "indexer/image/outline_matching.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/core.hpp>

namespace quarterturn {
namespace {

// What is sought: shifts and thicknesses in widths of the first head, turns in radians.
enum Unknown {
    larger,  // logarithm of the scale
    turned,
    right,
    down,
    hair_on_top,
    hair_at_sides,
    shoulders_right,
    shoulders_down,
    shoulders_turned,
    unknowns
};
using Vector = cv::Vec<double, unknowns>;
using Matrix = cv::Matx<double, unknowns, unknowns>;

// How far each is likely to differ between two pictures of one head (standard deviations). A camera
// is held upright within 2 degrees; hair that is pinned up stands about a finger's breadth higher
// or lower on a head 18 cm wide, and hair that is let down may be much wider; shoulders move little
// on one who sits for a picture.
constexpr std::array likely{1.0, 0.035, 10.0, 10.0, 0.02, 0.1, 0.015, 0.015, 0.02};

struct Part {
    bool hair = false;
    double exactness = 0;  // how far points are off when they fit, in widths of the head
    double weight = 0;     // as of so many points
};
constexpr Part top_of_head{true, 0.01, 20};
constexpr Part shoulder{false, 0.005, 10};

Spot middle_of(std::initializer_list<const OutlinePart*> parts) {
    Spot sum;
    double count = 0;
    for (const OutlinePart* part : parts) {
        for (const OutlinePoint& point : *part) {
            sum = {sum.x + point.at.x, sum.y + point.at.y};
            ++count;
        }
    }
    return {sum.x / count, sum.y / count};
}

// The circle through the points, with the least squares (Kåsa, 1976).
struct Circle {
    Spot middle;
    double radius = 0;
};

std::optional<Circle> circle_through(const OutlinePart& part) {
    cv::Matx33d squares = cv::Matx33d::zeros();
    cv::Vec3d sums;
    for (const OutlinePoint& point : part) {
        const cv::Vec3d row{2 * point.at.x, 2 * point.at.y, 1};
        squares += row * row.t();
        sums += row * (point.at.x * point.at.x + point.at.y * point.at.y);
    }
    cv::Vec3d found;
    if (!cv::solve(squares, sums, found, cv::DECOMP_CHOLESKY)) return std::nullopt;
    const double squared = found[2] + found[0] * found[0] + found[1] * found[1];
    if (squared <= 0) return std::nullopt;
    return Circle{{found[0], found[1]}, std::sqrt(squared)};
}

const OutlinePoint& nearest(const OutlinePart& part, const Spot& spot) {
    return *std::ranges::min_element(
        part, {}, [&](const OutlinePoint& point) { return distance(point.at, spot); });
}

class OutlineMatching {
  public:
    OutlineMatching(const HeadOutline& first, const HeadOutline& second)
        : first_(first),
          second_(second),
          head_(middle_of({&first.top})),
          shoulders_(middle_of({&first.shoulders[0], &first.shoulders[1]})) {}

    // From the circles of both heads, ever less tolerant.
    std::optional<Similarity> lay() {
        const auto circle = circle_through(first_.top);
        const auto other = circle_through(second_.top);
        if (!circle || !other) return std::nullopt;
        const double scale = circle->radius / other->radius;
        lay_ = {scale, 0, circle->middle.x - scale * other->middle.x,
                circle->middle.y - scale * other->middle.y};
        for (const double tolerance : {8.0, 4.0, 2.0}) {
            tolerance_ = tolerance;
            for (int round = 0; round < 8; ++round) improve();
        }
        if (!agrees()) return std::nullopt;
        return lay_;
    }

  private:
    // One point of the second and how it lies to the first.
    struct Pull {
        Vector by;       // how far each unknown moves it outwards
        double off = 0;  // how far it lies outside, in widths of the head
    };

    std::optional<Pull> pull(const OutlinePoint& point, const OutlinePart& onto, bool hair) const {
        constexpr double least_alike = 0.85;  // the cosine of about 30 degrees
        const Spot at = lay_(point.at);
        const OutlinePoint& there = nearest(onto, at);
        if (&there == &onto.front() || &there == &onto.back()) return std::nullopt;
        const Spot& out = there.outwards;
        const Spot turned_out{lay_.along * point.outwards.x - lay_.across * point.outwards.y,
                              lay_.across * point.outwards.x + lay_.along * point.outwards.y};
        if (turned_out.x * out.x + turned_out.y * out.y < least_alike * lay_.scale()) {
            return std::nullopt;
        }
        const double width = first_.width;
        const auto along = [&](double x, double y) { return (x * out.x + y * out.y) / width; };
        Pull pull;
        pull.by[larger] = along(at.x - head_.x, at.y - head_.y);
        pull.by[turned] = along(head_.y - at.y, at.x - head_.x);
        pull.by[right] = out.x;
        pull.by[down] = out.y;
        if (hair) {
            pull.by[hair_on_top] = 1;
            pull.by[hair_at_sides] = out.x * out.x;
        } else {
            pull.by[shoulders_right] = out.x;
            pull.by[shoulders_down] = out.y;
            pull.by[shoulders_turned] = along(shoulders_.y - at.y, at.x - shoulders_.x);
        }
        pull.off = along(at.x - there.at.x, at.y - there.at.y);
        for (int i = hair_on_top; i < unknowns; ++i) pull.off += pull.by[i] * found_[i];
        return pull;
    }

    void weigh_in(const OutlinePart& part, const OutlinePart& onto, const Part& kind) {
        const double each =
            kind.weight / (static_cast<double>(part.size()) * kind.exactness * kind.exactness);
        for (const OutlinePoint& point : part) {
            const auto pulled = pull(point, onto, kind.hair);
            if (!pulled) continue;
            const double far = pulled->off / (kind.exactness * tolerance_);
            const double weight = each / std::pow(1 + far * far, 2);
            squares_ += weight * (pulled->by * pulled->by.t());
            sums_ -= weight * pulled->off * pulled->by;
        }
    }

    void improve() {
        squares_ = Matrix::zeros();
        sums_ = Vector::all(0);
        found_[turned] = lay_.turn();
        for (int i = 0; i < unknowns; ++i) {
            const double weight = 1 / (likely[i] * likely[i]);
            squares_(i, i) += weight;
            const bool known_so_far = i == turned || i >= hair_on_top;
            if (known_so_far) sums_[i] -= weight * found_[i];
        }
        weigh_in(second_.top, first_.top, top_of_head);
        for (int side = 0; side < 2; ++side) {
            weigh_in(second_.shoulders[side], first_.shoulders[side], shoulder);
        }
        Vector step;
        cv::solve(squares_, sums_, step, cv::DECOMP_CHOLESKY);
        move(step);
    }

    void move(const Vector& step) {
        constexpr double furthest = 0.2;  // logarithm of a scale or radians: one step at a time
        const double scale = std::exp(std::clamp(step[larger], -furthest, furthest));
        const double turn = std::clamp(step[turned], -furthest, furthest);
        Similarity by{scale * std::cos(turn), scale * std::sin(turn), 0, 0};
        const Spot there = by(head_);
        by.x = head_.x - there.x + step[right] * first_.width;
        by.y = head_.y - there.y + step[down] * first_.width;
        const Spot shift = by(Spot{lay_.x, lay_.y});
        lay_ = {by.along * lay_.along - by.across * lay_.across,
                by.across * lay_.along + by.along * lay_.across, shift.x, shift.y};
        for (int i = hair_on_top; i < unknowns; ++i) found_[i] += step[i];
    }

    int fitting(const OutlinePart& part, const OutlinePart& onto, const Part& kind) const {
        return static_cast<int>(std::ranges::count_if(part, [&](const OutlinePoint& point) {
            const auto pulled = pull(point, onto, kind.hair);
            return pulled && std::abs(pulled->off) < tolerance_ * kind.exactness;
        }));
    }

    bool agrees() const {
        constexpr double least_of_top = 0.4;
        constexpr double least_of_shoulder = 0.2;  // the rest may be hidden by hair or cropped
        const auto share = [&](const OutlinePart& part, const OutlinePart& onto, const Part& kind) {
            return fitting(part, onto, kind) /
                   static_cast<double>(std::min(part.size(), onto.size()));
        };
        return share(second_.top, first_.top, top_of_head) >= least_of_top &&
               share(second_.shoulders[0], first_.shoulders[0], shoulder) >= least_of_shoulder &&
               share(second_.shoulders[1], first_.shoulders[1], shoulder) >= least_of_shoulder;
    }

    const HeadOutline& first_;
    const HeadOutline& second_;
    Spot head_;       // the middle of the top of the head
    Spot shoulders_;  // the middle of both
    Similarity lay_;
    Vector found_ = Vector::all(0);
    double tolerance_ = 1;
    Matrix squares_;
    Vector sums_;
};

}  // namespace

std::optional<Similarity> lay_outlines(const HeadOutline& first, const HeadOutline& second) {
    return OutlineMatching(first, second).lay();
}

}  // namespace quarterturn
