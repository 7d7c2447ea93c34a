#include "indexer/sheet/heads_window.h"

#include <algorithm>
#include <optional>

#include "indexer/sheet/window_inside.h"

namespace quarterturn {
namespace {

// Around a head, in heights of it (chosen): what is wished for, and the least that looks uncut.
// With less still, where a photo ends there, no corner of it is left empty.
constexpr double ample_air = 0.08;
constexpr double least_air = 0.03;

TwoLaid two_laid(const LaidPair& pair) {
    return {pair.first_aspect, pair.second_aspect, pair.alignment.second_onto_first};
}

// As high as the higher hair and the lower chin; an outline gone wrong reaches far above.
Box both_heads(const LaidPair& pair) {
    const Box first = head_of_both(pair);
    double top = first.y;
    double bottom = first.y + first.height;
    const auto reach = [&](const Spot& spot) {
        top = std::min(top, spot.y);
        bottom = std::max(bottom, spot.y);
    };
    for (const PicturePoint& point : {pair.second_points.top, pair.second_points.bottom}) {
        reach(pair.alignment.second_onto_first(spot_of(point, pair.second_aspect)));
    }
    constexpr double highest_hair = 0.25;  // above the points, in heights of the head (chosen)
    for (const Spot& hair : {pair.hair.first_top, pair.hair.second_top}) {
        if (pair.hair.centimetres && hair.y > first.y - highest_hair * first.height) reach(hair);
    }
    return {first.x, top, first.width, bottom - top};
}

Box head_with_air(const Box& head, double share) {
    const double air = share * head.height;
    return {head.x - air, head.y - air, head.width + 2 * air, head.height + 2 * air};
}

double smallest_height(const Box& head, double aspect) {
    return std::max(head.height, head.width / aspect);
}

// From the usual window down to the smallest one around the head, the largest that both fill.
std::optional<Box> filled_by_both(const TwoLaid& two, const Box& usual, const Box& head) {
    constexpr int steps = 8;
    const double smallest = smallest_height(head, usual.width / usual.height);
    const double largest = std::max(usual.height, smallest);
    for (int step = 0; step <= steps; ++step) {
        const double height = largest + (smallest - largest) * step / steps;
        const Box wanted = shrunk_about(usual, head, height / usual.height);
        if (const auto inside = moved_inside(two, wanted, head)) return inside;
    }
    return std::nullopt;
}

double empty_share(const Box& window, double aspect, const Similarity& lay) {
    constexpr int places = 48;  // each way
    const Similarity back = lay.inverse();
    int empty = 0;
    for (int row = 0; row < places; ++row) {
        for (int column = 0; column < places; ++column) {
            const Spot spot = back({window.x + window.width * (column + 0.5) / places,
                                    window.y + window.height * (row + 0.5) / places});
            const bool reached = spot.x >= 0 && spot.x <= aspect && spot.y >= 0 && spot.y <= 1;
            empty += reached ? 0 : 1;
        }
    }
    return static_cast<double>(empty) / (places * places);
}

HeadsWindow measured(const TwoLaid& two, const Box& window) {
    return {window,
            {empty_share(window, two.first_aspect, {}),
             empty_share(window, two.second_aspect, two.second_onto_first)}};
}

// The smallest window around the head can be moved one way, across the head's narrow side. The head
// stays in the middle unless that leaves noticeably more empty.
HeadsWindow least_empty(const TwoLaid& two, const Box& head, double aspect) {
    constexpr int places = 20;
    constexpr double worth_moving = 0.05;  // of the window (chosen)
    const double height = smallest_height(head, aspect);
    const double spare_width = height * aspect - head.width;
    const double spare_height = height - head.height;
    const auto at = [&](double share) {
        return measured(two, {head.x - spare_width * share, head.y - spare_height * share,
                              height * aspect, height});
    };
    const HeadsWindow middle = at(0.5);
    HeadsWindow best = middle;
    for (int place = 0; place <= places; ++place) {
        HeadsWindow other = at(static_cast<double>(place) / places);
        if (other.most_empty() < best.most_empty()) best = other;
    }
    return best.most_empty() < middle.most_empty() - worth_moving ? best : middle;
}

}  // namespace

double HeadsWindow::most_empty() const {
    return std::max(empty[0], empty[1]);
}

HeadsWindow window_of_both_heads(const LaidPair& pair, double cell_aspect) {
    const TwoLaid two = two_laid(pair);
    const Box heads = both_heads(pair);
    const Box usual = window_of(pair, cell_aspect);
    for (const double air : {ample_air, least_air, 0.0}) {
        if (const auto filled = filled_by_both(two, usual, head_with_air(heads, air))) {
            return {*filled, {}};
        }
    }
    return least_empty(two, head_with_air(heads, least_air), cell_aspect);
}

}  // namespace quarterturn
