#include "indexer/image/steepness.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>
#include <vector>

namespace quarterturn {
namespace {

constexpr int block_size = 32;              // pixels
constexpr int row_step = 4;                 // every fourth row is enough of a block
constexpr int directions = 8;               // over half a turn
constexpr double share_that_counts = 0.15;  // of the blocks, by contrast
constexpr std::size_t least_that_count = 4;
constexpr double place_among_them = 0.75;  // of their steepness, from the least

// The reach of the two comparisons, in pixels. The longer tells how blurred, the shorter which way.
constexpr double near_reach = 3;
constexpr double far_reach = 16;
constexpr double short_near_reach = 2;
constexpr double short_far_reach = 8;

cv::Point reach_of(int direction, double reach) {
    const double angle = std::numbers::pi * direction / directions;
    return {cvRound(reach * std::cos(angle)), cvRound(reach * std::sin(angle))};
}

// The part of the picture whose pixels have a neighbour at `reach`. Reaches point down or sideways.
cv::Rect with_neighbours(const cv::Mat& luma, cv::Point reach) {
    return {std::max(0, -reach.x), 0, luma.cols - std::abs(reach.x), luma.rows - reach.y};
}

double mean_square_slope(const cv::Mat& luma, const cv::Rect& area, cv::Point reach) {
    std::int64_t sum = 0;
    for (int y = area.y; y < area.y + area.height; y += row_step) {
        const uchar* here = luma.ptr(y) + area.x;
        const uchar* there = luma.ptr(y + reach.y) + area.x + reach.x;
        int row = 0;
        for (int x = 0; x < area.width; ++x) {
            const int change = there[x] - here[x];
            row += change * change;
        }
        sum += row;
    }
    const int rows = (area.height + row_step - 1) / row_step;
    return static_cast<double>(sum) / (rows * area.width * reach.dot(reach));
}

struct Place {
    cv::Rect area;
    double slope = 0;  // mean square, over the far reach
};

// The blocks of most contrast in this direction.
std::vector<Place> places_that_count(const cv::Mat& luma, cv::Point far) {
    std::vector<Place> places;
    const cv::Rect measurable = with_neighbours(luma, far);
    for (int y = 0; y + block_size <= luma.rows; y += block_size) {
        for (int x = 0; x + block_size <= luma.cols; x += block_size) {
            const cv::Rect area = cv::Rect(x, y, block_size, block_size) & measurable;
            if (area.area() < block_size * block_size / 2) continue;
            const double slope = mean_square_slope(luma, area, far);
            if (slope > 0) places.push_back({area, slope});
        }
    }
    const auto counting =
        std::max(least_that_count,
                 static_cast<std::size_t>(share_that_counts * static_cast<double>(places.size())));
    std::ranges::sort(places, std::greater{}, &Place::slope);
    places.resize(std::min(counting, places.size()));
    return places;
}

double high_among(std::vector<double> values) {
    if (values.empty()) return 0;
    const auto place =
        values.begin() +
        static_cast<std::ptrdiff_t>(place_among_them * static_cast<double>(values.size() - 1));
    std::ranges::nth_element(values, place);
    return *place;
}

double steepness_at(const cv::Mat& luma, const std::vector<Place>& places, cv::Point near,
                    cv::Point far) {
    std::vector<double> values;
    for (const Place& place : places) {
        const double slope = mean_square_slope(luma, place.area, far);
        if (slope > 0) values.push_back(mean_square_slope(luma, place.area, near) / slope);
    }
    return high_among(std::move(values));
}

// The part of the values that goes up and down once in half a turn, over their mean.
double turning_share(const std::array<double, directions>& values) {
    double mean = 0;
    double cosine = 0;
    double sine = 0;
    for (int i = 0; i < directions; ++i) {
        const double angle = 2 * std::numbers::pi * i / directions;
        mean += values[static_cast<std::size_t>(i)] / directions;
        cosine += values[static_cast<std::size_t>(i)] * std::cos(angle) * 2 / directions;
        sine += values[static_cast<std::size_t>(i)] * std::sin(angle) * 2 / directions;
    }
    return mean > 0 ? std::min(1.0, std::hypot(cosine, sine) / mean) : 0;
}

}  // namespace

Steepness measure_steepness(const cv::Mat& luma) {
    if (std::min(luma.cols, luma.rows) < 2 * block_size) return {};
    std::array<double, directions> by_direction{};
    std::array<double, directions> short_by_direction{};
    for (int i = 0; i < directions; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const cv::Point far = reach_of(i, far_reach);
        const auto places = places_that_count(luma, far);
        by_direction[at] = steepness_at(luma, places, reach_of(i, near_reach), far);
        short_by_direction[at] =
            steepness_at(luma, places, reach_of(i, short_near_reach), reach_of(i, short_far_reach));
    }
    return {std::ranges::min(by_direction), turning_share(short_by_direction)};
}

}  // namespace quarterturn
