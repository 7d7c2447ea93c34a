#include "indexer/image/light_difference.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "indexer/image/colour.h"
#include "indexer/image/silhouette.h"

namespace quarterturn {
namespace {

// Shares of white in linear light. Measured on generated photos, whose curve is straight below 0.55
// and rolls off above.
constexpr double least_light = 0.01;
constexpr double bright_light = 0.5;
constexpr double near_white_light = 0.85;
constexpr double least_background = 0.02;
constexpr double middle_grey = 0.184;  // CIE Y of L* 50

// Shoulders are dressed differently, and stand in the lowest quarter.
constexpr double lowest_row = 0.75;

cv::Mat far_from_head(const cv::Mat& shape) {
    cv::Mat wide;
    cv::dilate(shape, wide, cv::getStructuringElement(cv::MORPH_ELLIPSE, {9, 9}));
    return wide == 0;
}

LinearRgb light_at(const cv::Mat& bgr, int row, int column) {
    const auto& pixel = bgr.at<cv::Vec3b>(row, column);
    return linear_of_srgb({pixel[2], pixel[1], pixel[0]});
}

bool fit_to_compare(const LinearRgb& light, double most_light) {
    const auto [least, most] = std::minmax({light.red, light.green, light.blue});
    return least >= least_light && most <= most_light;
}

double median(std::vector<double>& values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

LinearRgb as_light_as_grey(const LinearRgb& light) {
    const double gain = middle_grey / luminance(light);
    return {light.red * gain, light.green * gain, light.blue * gain};
}

// The logarithms to the base 2 of second to first, one a place.
struct Ratios {
    std::vector<double> light, red, green, blue;
    LinearRgb first;  // the sum

    void add(const LinearRgb& one, const LinearRgb& other) {
        light.push_back(std::log2(luminance(other) / luminance(one)));
        red.push_back(std::log2(other.red / one.red));
        green.push_back(std::log2(other.green / one.green));
        blue.push_back(std::log2(other.blue / one.blue));
        first = {first.red + one.red, first.green + one.green, first.blue + one.blue};
    }

    double white_balance() {
        const LinearRgb second{first.red * std::exp2(median(red)),
                               first.green * std::exp2(median(green)),
                               first.blue * std::exp2(median(blue))};
        return colour_difference(lab_of_linear(as_light_as_grey(first)),
                                 lab_of_linear(as_light_as_grey(second)));
    }
};

struct Compared {
    cv::Mat first;  // of one size
    cv::Mat second;
    cv::Mat background;  // 255 in both
};

cv::Mat shrunk_to(const cv::Mat& bgr, cv::Size size) {
    cv::Mat small;
    cv::resize(bgr, small, size, 0, 0, cv::INTER_AREA);
    return small;
}

Compared to_compare(const cv::Mat& first, const cv::Mat& second) {
    constexpr int long_edge = 128;  // pixels: no grain is left, and a wall has no finer detail
    const cv::Mat shape = shape_before_background(first, long_edge);
    cv::Mat other = shape_before_background(second, long_edge);
    cv::resize(other, other, shape.size(), 0, 0, cv::INTER_NEAREST);
    return {shrunk_to(first, shape.size()), shrunk_to(second, shape.size()),
            far_from_head(shape) & far_from_head(other)};
}

Ratios ratios_of(const Compared& compared, double most_light) {
    Ratios ratios;
    const cv::Mat& background = compared.background;
    for (int row = 0; row < background.rows * lowest_row; ++row) {
        for (int column = 0; column < background.cols; ++column) {
            if (background.at<uchar>(row, column) == 0) continue;
            const LinearRgb here = light_at(compared.first, row, column);
            const LinearRgb there = light_at(compared.second, row, column);
            if (fit_to_compare(here, most_light) && fit_to_compare(there, most_light)) {
                ratios.add(here, there);
            }
        }
    }
    return ratios;
}

}  // namespace

std::optional<LightDifference> light_difference(const cv::Mat& first, const cv::Mat& second) {
    constexpr int least_edge = 32;  // pixels: GrabCut needs a border and a middle
    for (const cv::Mat& picture : {first, second}) {
        if (std::min(picture.cols, picture.rows) < least_edge) return std::nullopt;
    }
    const Compared compared = to_compare(first, second);
    const double least_places = least_background * static_cast<double>(compared.background.total());
    for (const double most_light : {bright_light, near_white_light}) {
        Ratios ratios = ratios_of(compared, most_light);
        if (static_cast<double>(ratios.light.size()) < least_places) continue;
        return LightDifference{median(ratios.light),       ratios.white_balance(),
                               most_light != bright_light, median(ratios.red),
                               median(ratios.green),       median(ratios.blue)};
    }
    return std::nullopt;
}

}  // namespace quarterturn
