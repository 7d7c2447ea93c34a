#include "indexer/rules/drawing_on_head.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace quarterturn {
namespace {

using Points = std::vector<PlanPoint>;

constexpr double sample_step = 0.02;        // between the points that are smoothed
constexpr std::size_t smoothing_reach = 2;  // samples to either side
constexpr double thinning_tolerance = 0.02;

double distance(PlanPoint a, PlanPoint b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

PlanPoint between(PlanPoint a, PlanPoint b, double share) {
    return {std::lerp(a.x, b.x, share), std::lerp(a.y, b.y, share)};
}

double distance_to_line(PlanPoint point, PlanPoint from, PlanPoint to) {
    const double length = distance(from, to);
    if (length == 0) return distance(point, from);
    const double along =
        (point.x - from.x) * (to.x - from.x) + (point.y - from.y) * (to.y - from.y);
    return distance(point, between(from, to, std::clamp(along / (length * length), 0.0, 1.0)));
}

double distance_to_stroke(PlanPoint point, const Points& points) {
    if (points.size() == 1) return distance(point, points.front());
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 1; i < points.size(); ++i) {
        nearest = std::min(nearest, distance_to_line(point, points[i - 1], points[i]));
    }
    return nearest;
}

// Points at even steps along the trail, so that a slow hand weighs no more than a quick one.
Points sampled(const Points& trail) {
    Points samples{trail.front()};
    for (std::size_t i = 1; i < trail.size(); ++i) {
        const double length = distance(trail[i - 1], trail[i]);
        const int steps = std::max(1, static_cast<int>(std::ceil(length / sample_step)));
        for (int step = 1; step <= steps; ++step) {
            samples.push_back(between(trail[i - 1], trail[i], static_cast<double>(step) / steps));
        }
    }
    return samples;
}

Points smoothed(const Points& samples) {
    Points smooth;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const std::size_t reach = std::min({smoothing_reach, i, samples.size() - 1 - i});
        PlanPoint sum;
        for (std::size_t j = i - reach; j <= i + reach; ++j) {
            sum = {sum.x + samples[j].x, sum.y + samples[j].y};
        }
        const auto count = static_cast<double>(2 * reach + 1);
        smooth.push_back({sum.x / count, sum.y / count});
    }
    return smooth;
}

// Adds the points between first and last that the line needs, and the last.
void add_thinned(const Points& points, std::size_t first, std::size_t last, Points& thin) {
    double furthest = thinning_tolerance;
    std::size_t bend = first;
    for (std::size_t i = first + 1; i < last; ++i) {
        const double away = distance_to_line(points[i], points[first], points[last]);
        if (away <= furthest) continue;
        furthest = away;
        bend = i;
    }
    if (bend != first) {
        add_thinned(points, first, bend, thin);
        add_thinned(points, bend, last, thin);
    } else {
        thin.push_back(points[last]);
    }
}

double hundredth(double value) {
    return std::round(value * 100) / 100 + 0.0;  // no negative zero
}

Points all_on_head(Points points) {
    for (PlanPoint& point : points) point = on_head(point);
    points.erase(std::unique(points.begin(), points.end()), points.end());
    return points;
}

}  // namespace

PlanPoint on_head(PlanPoint point) {
    const double away = std::max(1.0, std::hypot(point.x, point.y));
    return {hundredth(point.x / away), hundredth(point.y / away)};
}

std::vector<PlanPoint> drawn_line(const std::vector<PlanPoint>& trail) {
    if (trail.empty()) return {};
    const Points smooth = smoothed(sampled(all_on_head(trail)));
    Points thin{smooth.front()};
    if (smooth.size() > 1) add_thinned(smooth, 0, smooth.size() - 1, thin);
    return all_on_head(std::move(thin));
}

Stroke stroke_of(StrokeKind kind, std::vector<PlanPoint> points) {
    Stroke stroke{kind, all_on_head(std::move(points))};
    const bool meets = stroke.points.size() > 3 &&
                       distance(stroke.points.front(), stroke.points.back()) <= closing_distance;
    if (kind == StrokeKind::section && meets) stroke.points.back() = stroke.points.front();
    return stroke;
}

bool goes_round(const Stroke& stroke) {
    return stroke.points.size() > 3 && stroke.points.front() == stroke.points.back();
}

std::size_t things_drawn(const HeadDrawing& drawing) {
    return drawing.strokes.size() + drawing.marks.size();
}

std::optional<std::size_t> thing_at(const HeadDrawing& drawing, PlanPoint point, double within) {
    std::optional<std::size_t> found;
    double nearest = within;
    std::size_t thing = 0;
    const auto weigh = [&](double away) {
        if (away <= nearest) {
            nearest = away;
            found = thing;
        }
        ++thing;
    };
    for (const Stroke& stroke : drawing.strokes) weigh(distance_to_stroke(point, stroke.points));
    for (const PlanMark& mark : drawing.marks) weigh(distance(point, mark.at));
    return found;
}

HeadDrawing without_thing(HeadDrawing drawing, std::size_t thing) {
    if (thing >= things_drawn(drawing)) throw std::out_of_range("nothing of this number is drawn");
    const std::size_t strokes = drawing.strokes.size();
    if (thing < strokes) {
        drawing.strokes.erase(drawing.strokes.begin() + static_cast<std::ptrdiff_t>(thing));
    } else {
        drawing.marks.erase(drawing.marks.begin() + static_cast<std::ptrdiff_t>(thing - strokes));
    }
    return drawing;
}

int free_number(const HeadDrawing& drawing) {
    int number = 1;
    const auto taken = [&](const PlanMark& mark) { return mark.number == number; };
    while (std::any_of(drawing.marks.begin(), drawing.marks.end(), taken)) ++number;
    return number;
}

}  // namespace quarterturn
