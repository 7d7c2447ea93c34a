#include "indexer/image/shrink.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace quarterturn {
namespace {

constexpr int values_of_pixel = 3;
constexpr int whole_weight = 256;  // what the weights of one pixel add up to

// What one pixel is made of: so many pixels from the first on, by their weights.
struct Share {
    int first = 0;
    std::vector<std::uint16_t> weights;
};

// Rounded so that they add up to a whole: each is the step from one rounded sum to the next.
std::vector<Share> shares_of(int from, int to) {
    std::vector<Share> shares(static_cast<std::size_t>(to));
    const double step = static_cast<double>(from) / to;
    for (int i = 0; i < to; ++i) {
        const double begin = i * step;
        const double end = std::min((i + 1) * step, static_cast<double>(from));
        Share& share = shares[static_cast<std::size_t>(i)];
        share.first = std::min(static_cast<int>(begin), from - 1);
        long so_far = 0;
        for (int source = share.first; so_far < whole_weight; ++source) {
            const bool last = source + 1 >= from || source + 1 >= end;
            const long sum =
                last ? whole_weight : std::lround((source + 1 - begin) / step * whole_weight);
            share.weights.push_back(static_cast<std::uint16_t>(sum - so_far));
            so_far = sum;
        }
    }
    return shares;
}

// The rows of a share as one row, each value 256 times as large.
void add_rows(const cv::Mat& bgr, const Share& share, std::vector<std::uint16_t>& sums) {
    std::ranges::fill(sums, std::uint16_t{0});
    for (std::size_t i = 0; i < share.weights.size(); ++i) {
        const std::uint8_t* const row = bgr.ptr(share.first + static_cast<int>(i));
        const std::uint16_t weight = share.weights[i];
        for (std::size_t x = 0; x < sums.size(); ++x) {
            sums[x] = static_cast<std::uint16_t>(sums[x] + row[x] * weight);
        }
    }
}

void add_columns(const std::vector<std::uint16_t>& sums, const std::vector<Share>& shares,
                 std::uint8_t* to) {
    constexpr std::uint32_t half = whole_weight * whole_weight / 2;
    for (const Share& share : shares) {
        const std::uint16_t* from = sums.data() + share.first * values_of_pixel;
        std::uint32_t blue = half;
        std::uint32_t green = half;
        std::uint32_t red = half;
        for (const std::uint32_t weight : share.weights) {
            blue += from[0] * weight;
            green += from[1] * weight;
            red += from[2] * weight;
            from += values_of_pixel;
        }
        *to++ = static_cast<std::uint8_t>(blue >> 16);
        *to++ = static_cast<std::uint8_t>(green >> 16);
        *to++ = static_cast<std::uint8_t>(red >> 16);
    }
}

}  // namespace

cv::Mat shrunk_to(const cv::Mat& bgr, cv::Size size) {
    CV_Assert(bgr.type() == CV_8UC3 && size.width > 0 && size.height > 0 &&
              size.width <= bgr.cols && size.height <= bgr.rows);
    const std::vector<Share> rows = shares_of(bgr.rows, size.height);
    const std::vector<Share> columns = shares_of(bgr.cols, size.width);
    std::vector<std::uint16_t> sums(static_cast<std::size_t>(bgr.cols) * values_of_pixel);
    cv::Mat small(size, CV_8UC3);
    for (int y = 0; y < size.height; ++y) {
        add_rows(bgr, rows[static_cast<std::size_t>(y)], sums);
        add_columns(sums, columns, small.ptr(y));
    }
    return small;
}

}  // namespace quarterturn
