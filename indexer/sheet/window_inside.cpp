#include "indexer/sheet/window_inside.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace quarterturn {
namespace {

constexpr double as_good_as_inside = 1e-9;

// The side of a straight line on which `across` points away from.
struct Border {
    Spot across;  // of length 1
    double at = 0;

    double beyond(const Spot& spot) const { return across.x * spot.x + across.y * spot.y - at; }
};

Border border_through(const Spot& from, const Spot& to) {
    const double length = distance(from, to);
    const Spot across{(to.y - from.y) / length, (from.x - to.x) / length};
    return {across, across.x * from.x + across.y * from.y};
}

// Of a picture as it is laid, outwards.
void add_borders(std::vector<Border>& borders, double aspect, const Similarity& lay) {
    const std::array corners{lay({0, 0}), lay({aspect, 0}), lay({aspect, 1}), lay({0, 1})};
    for (std::size_t i = 0; i < corners.size(); ++i) {
        borders.push_back(border_through(corners[i], corners[(i + 1) % corners.size()]));
    }
}

std::vector<Border> borders_of(const TwoLaid& two) {
    std::vector<Border> borders;
    add_borders(borders, two.first_aspect, {});
    add_borders(borders, two.second_aspect, two.second_onto_first);
    return borders;
}

// For the middle of a window of that size that is to lie within.
Border for_middle(const Border& border, const Box& window) {
    const double reach =
        (std::abs(border.across.x) * window.width + std::abs(border.across.y) * window.height) / 2;
    return {border.across, border.at - reach};
}

// For the middle of a window of that size that is to hold the head.
void add_for_head(std::vector<Border>& borders, const Box& window, const Box& head) {
    const double right = head.x + window.width / 2;
    const double left = head.x + head.width - window.width / 2;
    const double low = head.y + window.height / 2;
    const double high = head.y + head.height - window.height / 2;
    for (const Border& border : {Border{{1, 0}, right}, Border{{-1, 0}, -left}, Border{{0, 1}, low},
                                 Border{{0, -1}, -high}}) {
        borders.push_back(border);
    }
}

Spot middle_of(const Box& box) {
    return {box.x + box.width / 2, box.y + box.height / 2};
}

bool within_all(const std::vector<Border>& borders, const Spot& spot) {
    return std::ranges::all_of(
        borders, [&](const Border& border) { return border.beyond(spot) <= as_good_as_inside; });
}

Spot straight_onto(const Border& border, const Spot& spot) {
    const double step = border.beyond(spot);
    return {spot.x - step * border.across.x, spot.y - step * border.across.y};
}

std::optional<Spot> crossing(const Border& one, const Border& other) {
    const double turn = one.across.x * other.across.y - one.across.y * other.across.x;
    if (std::abs(turn) < as_good_as_inside) return std::nullopt;
    return Spot{(one.at * other.across.y - other.at * one.across.y) / turn,
                (one.across.x * other.at - other.across.x * one.at) / turn};
}

// The nearest spot within all borders: the spot itself, straight onto one of them, or where two
// cross.
std::optional<Spot> nearest_within(const std::vector<Border>& borders, const Spot& spot) {
    std::optional<Spot> nearest;
    const auto consider = [&](const Spot& there) {
        if (nearest && distance(there, spot) >= distance(*nearest, spot)) return;
        if (within_all(borders, there)) nearest = there;
    };
    consider(spot);
    for (std::size_t i = 0; i < borders.size(); ++i) {
        consider(straight_onto(borders[i], spot));
        for (std::size_t j = 0; j < i; ++j) {
            if (const auto there = crossing(borders[i], borders[j])) consider(*there);
        }
    }
    return nearest;
}

}  // namespace

bool both_fill(const TwoLaid& two, const Box& window) {
    constexpr double hairbreadth = 1e-6;
    for (const Border& border : borders_of(two)) {
        if (for_middle(border, window).beyond(middle_of(window)) > hairbreadth) return false;
    }
    return true;
}

std::optional<Box> moved_inside(const TwoLaid& two, const Box& wanted, const Box& head) {
    std::vector<Border> borders;
    for (const Border& border : borders_of(two)) borders.push_back(for_middle(border, wanted));
    add_for_head(borders, wanted, head);
    const auto middle = nearest_within(borders, middle_of(wanted));
    if (!middle) return std::nullopt;
    return Box{middle->x - wanted.width / 2, middle->y - wanted.height / 2, wanted.width,
               wanted.height};
}

}  // namespace quarterturn
