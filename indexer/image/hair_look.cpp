#include "indexer/image/hair_look.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <opencv2/imgproc.hpp>

#include "indexer/image/colour.h"
#include "indexer/image/silhouette.h"

namespace quarterturn {
namespace {

constexpr int square_edge = 96;  // pixels of the square that is described

// A square round the head, of `heads` times its height: with the hair that hangs, and some air.
cv::Rect square_round(const cv::Rect& head) {
    constexpr double heads = 1.7;
    constexpr double above = 0.15;
    const int size = std::max(1, cvRound(heads * head.height));
    return {head.x + head.width / 2 - size / 2, head.y - cvRound(above * head.height), size, size};
}

// What lies outside of the picture is taken from its border.
cv::Mat cut_out(const cv::Mat& picture, const cv::Rect& square) {
    const cv::Rect inside = square & cv::Rect({0, 0}, picture.size());
    cv::Mat whole;
    cv::copyMakeBorder(picture(inside), whole, inside.y - square.y, square.br().y - inside.br().y,
                       inside.x - square.x, square.br().x - inside.br().x, cv::BORDER_REPLICATE);
    cv::resize(whole, whole, {square_edge, square_edge}, 0, 0, cv::INTER_AREA);
    return whole;
}

// The red to green and blue to green of light in steps of EV, and how light it is.
using Tint = cv::Vec3f;

Tint tint_of(const cv::Vec3b& pixel) {
    constexpr double dark = 0.002;  // keeps noise in black hair from becoming a hue
    const LinearRgb light = linear_of_srgb({pixel[2], pixel[1], pixel[0]});
    const auto ev = [&](double channel) {
        return std::log2((channel + dark) / (light.green + dark));
    };
    return {static_cast<float>(ev(light.red)), static_cast<float>(ev(light.blue)),
            static_cast<float>(std::log2(luminance(light) + dark))};
}

cv::Mat tints_of(const cv::Mat& bgr) {
    cv::Mat tints(bgr.size(), CV_32FC3);
    for (int y = 0; y < bgr.rows; ++y) {
        for (int x = 0; x < bgr.cols; ++x) {
            tints.at<Tint>(y, x) = tint_of(bgr.at<cv::Vec3b>(y, x));
        }
    }
    return tints;
}

// On top of the head, just inside of its outline, there is hair and nothing else.
cv::Mat surely_hair(const cv::Mat& shape) {
    constexpr int rim = 7;
    constexpr int rows = square_edge * 2 / 5;
    cv::Mat inner, deep;
    cv::erode(shape, inner, cv::getStructuringElement(cv::MORPH_ELLIPSE, {3, 3}));
    cv::erode(shape, deep,
              cv::getStructuringElement(cv::MORPH_ELLIPSE, {2 * rim + 3, 2 * rim + 3}));
    cv::Mat sure = inner & ~deep;
    sure.rowRange(rows, square_edge).setTo(0);
    return sure;
}

// A histogram whose steps blend into each other; sums to 1.
std::vector<float> histogram(const cv::Mat& values, int channel, const cv::Mat& where, double from,
                             double to, int steps) {
    std::vector<float> bins(static_cast<std::size_t>(steps), 0);
    double total = 0;
    for (int y = 0; y < values.rows; ++y) {
        for (int x = 0; x < values.cols; ++x) {
            if (where.at<uchar>(y, x) == 0) continue;
            const double value = values.at<Tint>(y, x)[channel];
            const double at =
                std::clamp((value - from) / (to - from) * (steps - 1), 0.0, steps - 1.0);
            const auto low = static_cast<std::size_t>(std::min(at, steps - 2.0));
            const double share = at - static_cast<double>(low);
            bins[low] += static_cast<float>(1 - share);
            bins[low + 1] += static_cast<float>(share);
            ++total;
        }
    }
    for (float& bin : bins) bin = total > 0 ? bin / static_cast<float>(total) : 0;
    return bins;
}

void append(std::vector<float>& all, const std::vector<float>& more) {
    all.insert(all.end(), more.begin(), more.end());
}

std::vector<float> colour_of(const cv::Mat& tints, const cv::Mat& hair) {
    std::vector<float> colour = histogram(tints, 0, hair, -0.5, 3, 15);
    append(colour, histogram(tints, 1, hair, -3, 0.5, 15));
    append(colour, histogram(tints, 2, hair, -9, 0, 8));
    return colour;
}

// A map, blurred so that a place is what lies around it, and read at the middles of the cells.
void read_cells(const cv::Mat& map, int cells, std::vector<float>& values) {
    cv::Mat soft;
    cv::GaussianBlur(map, soft, {0, 0}, 0.5 * square_edge / cells, 0, cv::BORDER_REPLICATE);
    for (int row = 0; row < cells; ++row) {
        for (int column = 0; column < cells; ++column) {
            values.push_back(soft.at<float>((2 * row + 1) * square_edge / (2 * cells),
                                            (2 * column + 1) * square_edge / (2 * cells)));
        }
    }
}

// How steep edges are that run one of so many ways, for each a map.
std::vector<cv::Mat> edges_by_direction(const cv::Mat& bgr, const cv::Mat& where, int directions) {
    cv::Mat grey, across, down;
    cv::cvtColor(bgr, grey, cv::COLOR_BGR2GRAY);
    grey.convertTo(grey, CV_32F);
    cv::GaussianBlur(grey, grey, {0, 0}, 0.8);  // grain is no hair
    cv::log(grey + 8, grey);                    // so that light and exposure only add
    cv::Sobel(grey, across, CV_32F, 1, 0);
    cv::Sobel(grey, down, CV_32F, 0, 1);
    std::vector<cv::Mat> maps;
    for (int i = 0; i < directions; ++i) maps.push_back(cv::Mat::zeros(bgr.size(), CV_32F));
    for (int y = 0; y < bgr.rows; ++y) {
        for (int x = 0; x < bgr.cols; ++x) {
            if (where.at<uchar>(y, x) == 0) continue;
            const float right = across.at<float>(y, x);
            const float below = down.at<float>(y, x);
            // Shared between the two directions it lies between.
            const double turn = std::atan2(below, right) / CV_PI + 1;
            const double at = std::fmod(turn, 1.0) * directions;
            const int low = static_cast<int>(at) % directions;
            const auto share = static_cast<float>(at - std::floor(at));
            const float steepness = std::hypot(right, below);
            maps[static_cast<std::size_t>(low)].at<float>(y, x) += (1 - share) * steepness;
            maps[static_cast<std::size_t>((low + 1) % directions)].at<float>(y, x) +=
                share * steepness;
        }
    }
    return maps;
}

// Histograms of the directions of edges (Dalal and Triggs, 2005), of head and hair alone; a cell
// counts for little where its edges are weak beside the others.
std::vector<float> texture_of(const cv::Mat& bgr, const cv::Mat& shape) {
    constexpr int cells = 6;
    constexpr int directions = 8;
    cv::Mat inner;
    cv::erode(shape, inner, cv::getStructuringElement(cv::MORPH_ELLIPSE, {5, 5}));
    std::vector<float> texture;
    for (const cv::Mat& map : edges_by_direction(bgr, inner, directions)) {
        read_cells(map, cells, texture);
    }
    constexpr std::size_t places = cells * cells;
    const float whole = std::accumulate(texture.begin(), texture.end(), 0.0F);
    for (std::size_t place = 0; place < places; ++place) {
        float sum = 1e-6F + whole / places;
        for (std::size_t at = place; at < texture.size(); at += places) sum += texture[at];
        for (std::size_t at = place; at < texture.size(); at += places) {
            texture[at] = std::sqrt(texture[at] / sum);
        }
    }
    return texture;
}

std::vector<float> shape_of(const cv::Mat& shape) {
    constexpr int cells = 12;
    cv::Mat map;
    shape.convertTo(map, CV_32F, 1.0 / 255);
    std::vector<float> values;
    read_cells(map, cells, values);
    return values;
}

HairLook::Shares shares_of(const std::vector<float>& values) {
    HairLook::Shares shares;
    for (const float value : values) shares.push_back(cv::saturate_cast<std::uint8_t>(255 * value));
    return shares;
}

}  // namespace

HairLook describe_hair(HeadFinder& finder, const cv::Mat& bgr) {
    if (bgr.empty()) return {};
    auto head = find_silhouette(bgr);
    if (!head) head = finder.head(bgr);
    if (!head) return {};
    constexpr int long_edge = 128;
    cv::Mat shape = shape_before_background(bgr, long_edge);
    cv::resize(shape, shape, bgr.size(), 0, 0, cv::INTER_LINEAR);
    const cv::Rect square = square_round(*head);
    shape = cut_out(shape, square) > 127;
    const cv::Mat small = cut_out(bgr, square);
    return {shares_of(colour_of(tints_of(small), surely_hair(shape))),
            shares_of(texture_of(small, shape)), shares_of(shape_of(shape))};
}

}  // namespace quarterturn
