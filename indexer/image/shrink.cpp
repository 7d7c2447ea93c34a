#include "indexer/image/shrink.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <opencv2/core/hal/intrin.hpp>
#include <span>
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
void add_rows(const cv::Mat& bgr, const Share& share, std::span<std::uint16_t> sums) {
    const std::uint8_t* const first = bgr.ptr(share.first);
    for (std::size_t x = 0; x < sums.size(); ++x) {
        sums[x] = static_cast<std::uint16_t>(first[x] * share.weights.front());
    }
    for (std::size_t i = 1; i < share.weights.size(); ++i) {
        const std::uint8_t* const row = bgr.ptr(share.first + static_cast<int>(i));
        const std::uint16_t weight = share.weights[i];
        for (std::size_t x = 0; x < sums.size(); ++x) {
            sums[x] = static_cast<std::uint16_t>(sums[x] + row[x] * weight);
        }
    }
}

// What the pixels of a row are made of: pairs of weights, as they are multiplied, and as many for
// each pixel, so that the loop over them always ends at the same place.
struct ColumnShares {
    std::vector<int> first_values;
    std::size_t pairs_each = 0;
    std::vector<std::int32_t> pairs;
};

ColumnShares in_pairs(const std::vector<Share>& shares) {
    ColumnShares columns;
    for (const Share& share : shares) {
        columns.pairs_each = std::max(columns.pairs_each, (share.weights.size() + 1) / 2);
    }
    for (const Share& share : shares) {
        columns.first_values.push_back(share.first * values_of_pixel);
        std::vector<std::uint16_t> weights = share.weights;
        weights.resize(2 * columns.pairs_each);
        for (std::size_t i = 0; i < weights.size(); i += 2) {
            columns.pairs.push_back(weights[i] | std::int32_t{weights[i + 1]} << 16);
        }
    }
    return columns;
}

// Blue, green and red at once, and a fourth value that is not used. Sums are halved, so that they
// are numbers with a sign, as the multiplication wants them.
std::int32_t pixel_of(const std::uint16_t* from, const std::int32_t* pairs, std::size_t count) {
    constexpr int halved_weights = whole_weight * whole_weight / 2;
    cv::v_int32x4 sum = cv::v_setall_s32(halved_weights / 2);
    for (std::size_t i = 0; i < count; ++i, from += 2 * values_of_pixel) {
        cv::v_uint16x8 both;
        cv::v_uint16x8 unused;
        cv::v_zip(cv::v_load_low(from) >> 1, cv::v_load_low(from + values_of_pixel) >> 1, both,
                  unused);
        sum += cv::v_dotprod(cv::v_reinterpret_as_s16(both),
                             cv::v_reinterpret_as_s16(cv::v_setall_s32(pairs[i])));
    }
    const cv::v_int32x4 values = sum >> 15;
    const cv::v_uint8x16 bytes = cv::v_pack_u(cv::v_pack(values, values), cv::v_setzero_s16());
    return cv::v_reinterpret_as_s32(bytes).get0();
}

// The fourth value of a pixel lies where the next one goes, and that of the last beyond them all.
void add_columns(std::span<const std::uint16_t> sums, const ColumnShares& columns,
                 std::span<std::uint8_t> to) {
    const std::int32_t* pairs = columns.pairs.data();
    std::uint8_t* at = to.data();
    for (const int first : columns.first_values) {
        const std::int32_t pixel = pixel_of(sums.data() + first, pairs, columns.pairs_each);
        std::memcpy(at, &pixel, sizeof pixel);
        pairs += columns.pairs_each;
        at += values_of_pixel;
    }
}

}  // namespace

cv::Mat shrunk_to(const cv::Mat& bgr, cv::Size size) {
    CV_Assert(bgr.type() == CV_8UC3 && size.width > 0 && size.height > 0 &&
              size.width <= bgr.cols && size.height <= bgr.rows);
    const std::vector<Share> rows = shares_of(bgr.rows, size.height);
    const ColumnShares columns = in_pairs(shares_of(bgr.cols, size.width));
    const std::size_t values = static_cast<std::size_t>(bgr.cols) * values_of_pixel;
    const std::size_t read_beyond = 2 * columns.pairs_each * values_of_pixel + 1;
    std::vector<std::uint16_t> sums(values + read_beyond);
    const std::size_t values_made = static_cast<std::size_t>(size.width) * values_of_pixel;
    std::vector<std::uint8_t> made(values_made + 1);
    cv::Mat small(size, CV_8UC3);
    for (int y = 0; y < size.height; ++y) {
        add_rows(bgr, rows[static_cast<std::size_t>(y)], std::span(sums).first(values));
        add_columns(sums, columns, made);
        std::copy_n(made.data(), values_made, small.ptr(y));
    }
    return small;
}

}  // namespace quarterturn
