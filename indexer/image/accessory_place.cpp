#include "indexer/image/accessory_place.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "indexer/image/silhouette.h"

namespace quarterturn {
namespace {

constexpr double head_height_cm = 23;
constexpr double pixels_a_cm = 10;
constexpr double furthest_move = 6;  // cm: further off it is another thing that stands out
constexpr int shape_edge = 256;      // pixels

// The part of the pictures around the head, at one size for every head.
struct HeadWindow {
    double x = 0;  // its corner, in heights of the first picture
    double y = 0;
    double scale = 0;  // pixels of the window to a height of the first picture
    cv::Size size;
    cv::Rect crown;  // hair and nothing else, but for what is beside the head

    Spot spot_at(const cv::Point2d& pixel) const {
        return {x + pixel.x / scale, y + pixel.y / scale};
    }
};

HeadWindow window_around(const HeadPoints& points, double aspect) {
    const Spot top = spot_of(points.top, aspect);
    const Spot bottom = spot_of(points.bottom, aspect);
    const double head = distance(top, bottom);
    const double middle = (top.x + bottom.x) / 2;
    constexpr double half_width = 0.75;  // of the head's height: with a bun at the side of it
    constexpr double above = 0.15;
    constexpr double below = 0.2;
    HeadWindow window{middle - half_width * head,
                      std::min(top.y, bottom.y) - above * head,
                      head_height_cm * pixels_a_cm / head,
                      {},
                      {}};
    const double pixels = head_height_cm * pixels_a_cm;
    window.size = {cvRound(2 * half_width * pixels), cvRound((1 + above + below) * pixels)};
    window.crown = {cvRound((half_width - 0.2) * pixels), 0, cvRound(0.4 * pixels),
                    cvRound((above + 0.14) * pixels)};
    return window;
}

cv::Mat in_window(const cv::Mat& picture, const Similarity& lay, const HeadWindow& window) {
    const double pixel = 1.0 / picture.rows;
    const cv::Matx23d place(lay.along * pixel * window.scale, -lay.across * pixel * window.scale,
                            (lay.x - window.x) * window.scale, lay.across * pixel * window.scale,
                            lay.along * pixel * window.scale, (lay.y - window.y) * window.scale);
    cv::Mat shown;
    cv::warpAffine(picture, shown, place, window.size, cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    return shown;
}

cv::Mat disc(double radius_cm) {
    const int size = 2 * cvRound(radius_cm * pixels_a_cm) + 1;
    return cv::getStructuringElement(cv::MORPH_ELLIPSE, {size, size});
}

// What is seen in one of the two, in pixels of the window.
struct SeenHead {
    cv::Mat lab;
    cv::Mat shape;  // 255 where it is not background
};

double quantile(std::vector<float>& values, double share) {
    const auto at = values.begin() + static_cast<std::ptrdiff_t>(share * (values.size() - 1));
    std::nth_element(values.begin(), at, values.end());
    return *at;
}

// The least of a channel that is more than the crown shows, flaws of its lighting aside.
double above_crown(const cv::Mat& channel, const cv::Mat& shape, const cv::Rect& crown) {
    constexpr double lit = 0.95;
    std::vector<float> values;
    for (int y = crown.y; y < crown.y + crown.height; ++y) {
        for (int x = crown.x; x < crown.x + crown.width; ++x) {
            if (shape.at<uchar>(y, x) > 0) values.push_back(channel.at<uchar>(y, x));
        }
    }
    return values.empty() ? 0 : quantile(values, lit);
}

// Lab of 8 bits, so a share of 255.
struct HeadColours {
    cv::Mat lightness;
    double lightest = 0;  // of the crown
    cv::Mat hair;         // 255 where it is no lighter and no redder or yellower than the crown
};

HeadColours colours_of(const SeenHead& head, const cv::Rect& crown) {
    constexpr std::array slack{40.0, 6.0, 8.0};
    HeadColours colours;
    colours.hair = head.shape.clone();
    std::array<cv::Mat, 3> channels;
    cv::split(head.lab, channels.data());
    for (std::size_t i = 0; i < channels.size(); ++i) {
        const double most = above_crown(channels[i], head.shape, crown);
        if (i == 0) colours.lightest = most;
        colours.hair &= channels[i] <= most + slack[i];
    }
    colours.lightness = channels[0];
    return colours;
}

// How much of what lies around each place is within the mask, 0 … 1.
cv::Mat share_around(const cv::Mat& mask, double reach_cm) {
    const int size = 2 * cvRound(reach_cm * pixels_a_cm) + 1;
    cv::Mat share;
    mask.convertTo(share, CV_32FC1, 1.0 / 255);
    cv::boxFilter(share, share, CV_32FC1, {size, size});
    return share;
}

// 255 where it is lighter than the hair around it.
cv::Mat lighter_than_hair(const SeenHead& head, const HeadColours& colours) {
    constexpr double least_lighter = 55;
    constexpr double lock = 1.3;         // cm, half a width
    constexpr double around = 2.2;       // cm
    constexpr double least_hair = 0.75;  // of the head around it
    constexpr double least_near = 0.3;   // of all around it
    cv::Mat lighter;
    cv::morphologyEx(colours.lightness, lighter, cv::MORPH_TOPHAT, disc(lock));
    const cv::Mat light =
        (lighter >= least_lighter) & (colours.lightness >= colours.lightest + least_lighter);
    const cv::Mat hair = share_around(colours.hair & ~light, around);
    const cv::Mat rest = share_around(head.shape & ~light, around);
    return light & (hair >= least_hair * rest) & (hair >= least_near);
}

// Ears and the neck look out from under hair, and so does the background.
bool is_worn(const cv::Mat& piece, const SeenHead& head, const HeadColours& colours,
             const cv::Mat& light, double area_cm2) {
    constexpr double most_skin = 0.3;  // of what touches it
    constexpr double most_background = 0.4;
    constexpr double like_background = 25;
    constexpr double largest_like_it = 1.0;  // cm²
    cv::Mat rim, blurred;
    cv::dilate(piece, rim, disc(0.7));
    cv::dilate(light, blurred, disc(0.25));
    rim &= ~blurred;
    const double touching = cv::countNonZero(rim);
    if (touching == 0) return false;
    if (cv::countNonZero(rim & head.shape & ~colours.hair) > most_skin * touching) return false;
    if (cv::countNonZero(rim & ~head.shape) > most_background * touching) return false;
    if (area_cm2 < largest_like_it) return true;
    cv::Mat near;
    cv::dilate(piece, near, disc(4.0));
    near &= ~head.shape;
    if (cv::countNonZero(near) == 0) return true;
    return cv::norm(cv::mean(head.lab, piece) - cv::mean(head.lab, near)) > like_background;
}

// 255 where something is worn in the hair.
cv::Mat standing_out(const SeenHead& head, const HeadColours& colours) {
    const cv::Mat light = lighter_than_hair(head, colours);
    cv::Mat labels, stats, centres;
    const int count = cv::connectedComponentsWithStats(light, labels, stats, centres);
    cv::Mat worn = cv::Mat::zeros(light.size(), CV_8UC1);
    for (int label = 1; label < count; ++label) {
        constexpr double least_cm2 = 0.05;
        const double area = stats.at<int>(label, cv::CC_STAT_AREA) / (pixels_a_cm * pixels_a_cm);
        const cv::Mat piece = labels == label;
        if (area >= least_cm2 && is_worn(piece, head, colours, light, area)) worn |= piece;
    }
    return worn;
}

// The pieces that lie together and cover most; 255 where they are, nothing when that is too little.
cv::Mat largest_group(const cv::Mat& worn) {
    constexpr double apart = 1.3;  // cm, half of it
    constexpr double least_cm2 = 0.7;
    cv::Mat together, labels;
    cv::dilate(worn, together, disc(apart));
    const int count = cv::connectedComponents(together, labels);
    cv::Mat largest;
    double most = least_cm2 * pixels_a_cm * pixels_a_cm;
    for (int label = 1; label < count; ++label) {
        const cv::Mat group = worn & (labels == label);
        const double area = cv::countNonZero(group);
        if (area < most) continue;
        most = area;
        largest = group;
    }
    return largest;
}

cv::Mat accessory_in(const cv::Mat& bgr, const Similarity& lay, const HeadWindow& window) {
    cv::Mat shape;
    cv::resize(shape_before_background(bgr, shape_edge), shape, bgr.size());
    SeenHead head;
    head.shape = in_window(shape, lay, window) > 127;
    cv::cvtColor(in_window(bgr, lay, window), head.lab, cv::COLOR_BGR2Lab);
    return largest_group(standing_out(head, colours_of(head, window.crown)));
}

Spot middle_of(const cv::Mat& mask, const HeadWindow& window) {
    const cv::Moments moments = cv::moments(mask, true);
    return window.spot_at({moments.m10 / moments.m00, moments.m01 / moments.m00});
}

// The shift by which the first pattern lies best upon the second. Nothing when none does well.
std::optional<AccessoryMove> move_between(const cv::Mat& first, const cv::Mat& second) {
    constexpr double soft = 0.3;  // cm
    constexpr double least_alike = 0.75;
    const int furthest = cvRound(furthest_move * pixels_a_cm);
    cv::Mat pattern, field, alike;
    first.convertTo(pattern, CV_32FC1, 1.0 / 255);
    second.convertTo(field, CV_32FC1, 1.0 / 255);
    cv::GaussianBlur(pattern, pattern, {}, soft * pixels_a_cm);
    cv::GaussianBlur(field, field, {}, soft * pixels_a_cm);
    const double both = cv::norm(pattern) * cv::norm(field);
    cv::copyMakeBorder(field, field, furthest, furthest, furthest, furthest, cv::BORDER_CONSTANT);
    cv::matchTemplate(field, pattern, alike, cv::TM_CCORR);
    double best = 0;
    cv::Point at;
    cv::minMaxLoc(alike, nullptr, &best, nullptr, &at);
    if (best < least_alike * both) return std::nullopt;
    return AccessoryMove{(at.x - furthest) / pixels_a_cm, (furthest - at.y) / pixels_a_cm};
}

}  // namespace

double AccessoryMove::length() const {
    return std::hypot(right, higher);
}

bool AccessoryPlace::differs() const {
    return move && move->length() >= least_centimetres;
}

AccessoryPlace accessory_place(const cv::Mat& first, const cv::Mat& second,
                               const HeadAlignment& alignment, const HeadPoints& first_points) {
    const HeadWindow window =
        window_around(first_points, static_cast<double>(first.cols) / first.rows);
    if (!std::isfinite(window.scale)) return {};
    const cv::Mat one = accessory_in(first, {}, window);
    const cv::Mat other = accessory_in(second, alignment.second_onto_first, window);
    AccessoryPlace place;
    if (!one.empty()) place.first = middle_of(one, window);
    if (!other.empty()) place.second = middle_of(other, window);
    if (place.first && place.second) place.move = move_between(one, other);
    return place;
}

}  // namespace quarterturn
