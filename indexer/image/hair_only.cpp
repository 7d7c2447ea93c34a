#include "indexer/image/hair_only.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

namespace quarterturn {
namespace {

constexpr double least_side = 1.0 / 6;  // of the picture's, that a crop leaves
// A found square holds the face with its forehead; in shares of its side (as in head.cpp: the head
// is 1.12 of the square wide).
constexpr double beside_face = 0.1;
constexpr double above_face = 0.05;
constexpr double below_face = 0.2;
constexpr double round_skin = 1.2;        // a cover is round, and holds the corners of the jaw too
constexpr double worth_less = 0.9;        // of the area, from which a smaller cover is worth a look
constexpr double least_hair = 0.08;       // of the head, that a crop shows
constexpr double most_face_shown = 0.25;  // of brows to mouth
constexpr double rim_share = 0.05;        // of the cover's shorter side, softened

cv::Rect whole_face(const cv::Rect& found, const cv::Rect& picture) {
    const cv::Rect2d wide(found.x - beside_face * found.width, found.y - above_face * found.height,
                          (1 + 2 * beside_face) * found.width,
                          (1 + above_face + below_face) * found.height);
    return cv::Rect(wide) & picture;
}

HairOnly of_rect(HairOnlyWay way, const cv::Rect& rect, cv::Size picture) {
    HairOnly how;
    how.way = way;
    how.x = static_cast<double>(rect.x) / picture.width;
    how.y = static_cast<double>(rect.y) / picture.height;
    how.width = static_cast<double>(rect.width) / picture.width;
    how.height = static_cast<double>(rect.height) / picture.height;
    return how;
}

cv::Rect in_pixels(const HairOnly& how, cv::Size picture) {
    const int left = cvRound(how.x * picture.width);
    const int top = cvRound(how.y * picture.height);
    const cv::Rect rect(left, top, cvRound((how.x + how.width) * picture.width) - left,
                        cvRound((how.y + how.height) * picture.height) - top);
    return rect & cv::Rect({}, picture);
}

bool large_enough(const cv::Rect& crop, cv::Size picture) {
    return crop.width >= least_side * picture.width && crop.height >= least_side * picture.height;
}

// Above, below, left and right of what is left out.
std::vector<cv::Rect> crops_beside(const cv::Rect& out, cv::Size picture) {
    std::vector<cv::Rect> crops{{0, 0, picture.width, out.y},
                                {0, out.br().y, picture.width, picture.height - out.br().y},
                                {0, 0, out.x, picture.height},
                                {out.br().x, 0, picture.width - out.br().x, picture.height}};
    std::erase_if(crops, [&](const cv::Rect& crop) { return !large_enough(crop, picture); });
    return crops;
}

// The first is the straight one where there is one; a cascade that sees the same face in profile
// puts a large square anywhere around it.
std::vector<cv::Rect> apart_from_the_first(std::span<const cv::Rect> faces) {
    std::vector<cv::Rect> apart{faces.front()};
    for (const cv::Rect& face : faces.subspan(1)) {
        const cv::Rect common = face & faces.front();
        if (common.area() < faces.front().area() / 4) apart.push_back(face);
    }
    return apart;
}

// The skin of the only face, without neck and ears beside it.
std::optional<cv::Rect> face_alone(const HeadInPicture& shown, const cv::Rect& face) {
    if (!shown.skin || apart_from_the_first(shown.faces).size() > 1) return std::nullopt;
    const cv::Rect skin = *shown.skin & face;
    const cv::Size wider(cvRound(round_skin * skin.width), cvRound(round_skin * skin.height));
    const cv::Point shift((skin.width - wider.width) / 2, (skin.height - wider.height) / 2);
    const cv::Rect cover = cv::Rect(skin.tl() + shift, wider) & cv::Rect({}, shown.picture);
    if (skin.empty() || cover.area() > worth_less * face.area()) return std::nullopt;
    return cover;
}

bool looks_to_the_left(Angle angle) {
    return angle == Angle::left || angle == Angle::left_three_quarter;
}

bool looks_to_the_right(Angle angle) {
    return angle == Angle::right || angle == Angle::right_three_quarter;
}

// The half of the head that the face is not in, and all behind it.
std::optional<cv::Rect> half_that_looks_away(const HeadInPicture& shown) {
    if (!shown.angle || !shown.head) return std::nullopt;
    const int middle = shown.head->x + shown.head->width / 2;
    if (looks_to_the_left(*shown.angle)) {
        return cv::Rect(middle, 0, shown.picture.width - middle, shown.picture.height);
    }
    if (looks_to_the_right(*shown.angle)) return cv::Rect(0, 0, middle, shown.picture.height);
    return std::nullopt;
}

std::vector<HairOnly> ways_by_angle(const HeadInPicture& shown) {
    if (shown.angle == Angle::back || shown.angle == Angle::crown) return {HairOnly{}};
    const auto half = half_that_looks_away(shown);
    if (!half || !large_enough(*half, shown.picture)) return {};
    return {of_rect(HairOnlyWay::crop, *half, shown.picture)};
}

// Brows to mouth of a found square, as shares of its side.
cv::Rect middle_of(const cv::Rect& face) {
    return {face.x + face.width / 5, face.y + face.height / 4, face.width * 3 / 5,
            face.height * 11 / 20};
}

bool agree(const cv::Rect& one, const cv::Rect& other) {
    const int common = (one & other).area();
    return 2 * common >= one.area() + other.area() - common;
}

cv::Mat covered(const cv::Mat& bgr, const cv::Rect& box) {
    cv::Mat cover(bgr.size(), CV_32F, cv::Scalar(0));
    cv::ellipse(cover, cv::RotatedRect((box.tl() + box.br()) / 2, box.size(), 0), cv::Scalar(1),
                cv::FILLED);
    const double rim = std::max(1.0, rim_share * std::min(box.width, box.height));
    // Softened outwards alone: what lies inside the ellipse is covered wholly.
    cv::Mat soft;
    const int reach = 2 * cvRound(rim) + 1;
    cv::dilate(cover, soft, cv::getStructuringElement(cv::MORPH_ELLIPSE, {reach, reach}));
    cv::GaussianBlur(soft, soft, {}, rim / 2);
    cv::max(soft, cover, soft);
    const cv::Scalar colour = cv::mean(bgr(box));
    cv::Mat result = bgr.clone();
    for (int y = 0; y < result.rows; ++y) {
        for (int x = 0; x < result.cols; ++x) {
            const float share = soft.at<float>(y, x);
            auto& pixel = result.at<cv::Vec3b>(y, x);
            for (int c = 0; c < 3; ++c) {
                pixel[c] = cv::saturate_cast<uchar>((1 - share) * pixel[c] + share * colour[c]);
            }
        }
    }
    return result;
}

}  // namespace

std::vector<HairOnly> ways_without_face(const HeadInPicture& shown) {
    if (shown.faces.empty()) return ways_by_angle(shown);
    const cv::Rect picture({}, shown.picture);
    cv::Rect out;
    for (const cv::Rect& face : apart_from_the_first(shown.faces)) out |= whole_face(face, picture);
    const cv::Rect head = shown.head.value_or(picture);
    auto crops = crops_beside(out, shown.picture);
    std::erase_if(crops, [&](const cv::Rect& crop) {
        return (crop & head).area() < least_hair * head.area();
    });
    std::ranges::stable_sort(crops, std::greater<>(),
                             [&](const cv::Rect& crop) { return (crop & head).area(); });
    std::vector<HairOnly> ways;
    for (const cv::Rect& crop : crops) {
        ways.push_back(of_rect(HairOnlyWay::crop, crop, shown.picture));
    }
    const auto skin = face_alone(shown, out);
    if (skin) ways.push_back(of_rect(HairOnlyWay::cover, *skin, shown.picture));
    ways.push_back(of_rect(HairOnlyWay::cover, out, shown.picture));
    return ways;
}

bool shows_perhaps_face(const HairOnly& how, cv::Size picture, std::span<const cv::Rect> perhaps) {
    const cv::Rect box = in_pixels(how, picture);
    return std::ranges::any_of(perhaps, [&](const cv::Rect& face) {
        const auto witnesses = std::ranges::count_if(
            perhaps, [&](const cv::Rect& other) { return agree(face, other); });
        if (witnesses < 2) return false;  // itself
        const cv::Rect middle = middle_of(face);
        const int inside = (middle & box).area();
        const int shown = how.way == HairOnlyWay::crop ? inside : middle.area() - inside;
        return shown > most_face_shown * middle.area();
    });
}

cv::Mat without_face(const cv::Mat& bgr, const HairOnly& how) {
    const cv::Rect box = in_pixels(how, bgr.size());
    if (box.empty()) throw std::runtime_error("Nothing of the picture would be left.");
    return how.way == HairOnlyWay::crop ? bgr(box).clone() : covered(bgr, box);
}

}  // namespace quarterturn
