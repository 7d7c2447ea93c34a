#include "indexer/image/head_alignment.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <stdexcept>

#include "indexer/image/face_skin.h"
#include "indexer/image/head_matching.h"
#include "indexer/image/head_outline.h"
#include "indexer/image/outline_matching.h"
#include "indexer/image/silhouette.h"

namespace quarterturn {
namespace {

constexpr int finding_edge = 256;  // pixels: the long edge of the picture heads are found in

double aspect_of(const cv::Mat& bgr) {
    return static_cast<double>(bgr.cols) / bgr.rows;
}

HeadPlace head_between(const HeadPoints& points, double aspect) {
    constexpr double width_of_height = 0.8;  // of the demo heads, all angles
    const Spot top = spot_of(points.top, aspect);
    const Spot bottom = spot_of(points.bottom, aspect);
    const double height = distance(top, bottom);
    return {{(top.x + bottom.x) / 2, (top.y + bottom.y) / 2}, width_of_height * height, height};
}

HeadPlace found_head(HeadFinder& finder, const cv::Mat& bgr) {
    const double height = bgr.rows;
    const auto found = finder.head(bgr);
    const cv::Rect2d head = found && !found->empty() ? cv::Rect2d(*found)
                                                     : cv::Rect2d(bgr.cols * 0.25, bgr.rows * 0.15,
                                                                  bgr.cols * 0.5, bgr.rows * 0.5);
    return {{(head.x + head.width / 2) / height, (head.y + head.height / 2) / height},
            head.width / height,
            head.height / height};
}

HeadPlace head_of(HeadFinder& finder, const HeadPicture& picture) {
    return picture.points ? head_between(*picture.points, aspect_of(picture.bgr))
                          : found_head(finder, with_long_edge(picture.bgr, finding_edge));
}

// What the two faces say, each laid upon the other, or the one that shows.
struct ByFaces {
    Similarity second_onto_first;
    bool sure = false;
};

// Half way between two that are nearly the same.
Similarity between(const Similarity& one, const Similarity& other, const Spot& middle) {
    const double scale = std::sqrt(one.scale() * other.scale());
    const double turn = (one.turn() + other.turn()) / 2;
    const Spot by_one = one.inverse()(middle);
    const Spot by_other = other.inverse()(middle);
    Similarity lay{scale * std::cos(turn), scale * std::sin(turn), 0, 0};
    const Spot there = lay(Spot{(by_one.x + by_other.x) / 2, (by_one.y + by_other.y) / 2});
    lay.x = middle.x - there.x;
    lay.y = middle.y - there.y;
    return lay;
}

// Whether both ways found the same. Chosen by measurement, see
// tests/accuracy/head_alignment_test.cpp.
bool same(const LaidHead& one, const LaidHead& other, const HeadPlace& second) {
    constexpr double most_scale = 0.015;
    constexpr double most_shift = 0.006;  // of the head's height
    constexpr double most_turn = 0.026;   // radians: 1.5 degrees
    const Similarity& lay = one.second_onto_first;
    const Similarity& again = other.second_onto_first;
    const double shift = distance(lay(second.middle), again(second.middle)) / lay.scale();
    return std::abs(std::log(lay.scale() / again.scale())) <= most_scale &&
           shift <= most_shift * second.height && std::abs(lay.turn() - again.turn()) <= most_turn;
}

// The second laid upon the first by the skin of the first; nothing where that says too little.
std::optional<LaidHead> lay_by_skin(HeadFinder& finder, const cv::Mat& first, const cv::Mat& second,
                                    const HeadPlace& first_head, const HeadPlace& second_head) {
    const cv::Mat skin = face_skin(finder, first);
    if (skin.empty()) return std::nullopt;
    const LaidHead laid = lay_head(first, second, first_head, second_head, skin);
    if (laid.agreement < HeadAlignment::least_agreement) return std::nullopt;
    return laid;
}

std::optional<ByFaces> lay_by_faces(HeadFinder& finder, const cv::Mat& first, const cv::Mat& second,
                                    const HeadPlace& first_head, const HeadPlace& second_head) {
    constexpr double least_alone = 0.65;  // chosen by measurement, as above
    const auto forth = lay_by_skin(finder, first, second, first_head, second_head);
    auto back = lay_by_skin(finder, second, first, second_head, first_head);
    if (back) back->second_onto_first = back->second_onto_first.inverse();
    if (forth && back && same(*forth, *back, second_head)) {
        return ByFaces{
            between(forth->second_onto_first, back->second_onto_first, first_head.middle), true};
    }
    if (!forth && !back) return std::nullopt;
    const bool by_forth = forth && (!back || forth->agreement >= back->agreement);
    const LaidHead& better = by_forth ? *forth : *back;
    if (forth && back) return ByFaces{better.second_onto_first, false};
    if (better.agreement < least_alone) return std::nullopt;
    return ByFaces{better.second_onto_first, true};
}

// The top of what stands before the background.
std::optional<Spot> top_of(const cv::Mat& bgr) {
    const cv::Mat shape = shape_before_background(bgr, finding_edge);
    const cv::Rect bounds = cv::boundingRect(shape);
    if (bounds.empty()) return std::nullopt;
    const cv::Rect row = cv::boundingRect(shape.row(bounds.y));
    return Spot{(row.x + row.width / 2.0) / shape.rows, static_cast<double>(bounds.y) / shape.rows};
}

// A face is nearer to the camera than the middle of the head, so that it grows faster as the camera
// comes near; the top of the outline carries the hair. Half way between what the two say of the
// size, from the chin up. Where they are further apart the hair is done so differently, or the
// camera stood so differently, that neither is to be trusted.
void temper(ByFaces& laid, const HeadPlace& first_head, const cv::Mat& first,
            const cv::Mat& second) {
    constexpr double furthest = 0.055;
    const auto top = top_of(first);
    const auto second_top = top_of(second);
    if (!top || !second_top) return;
    Similarity& lay = laid.second_onto_first;
    const Spot chin = first_head.bottom();
    const double higher = (chin.y - lay(*second_top).y) / (chin.y - top->y) - 1;
    if (std::abs(higher) > furthest) {
        laid.sure = false;
        return;
    }
    const double size = 1 / (1 + higher / 2);
    lay = {lay.along * size, lay.across * size, chin.x + (lay.x - chin.x) * size,
           chin.y + (lay.y - chin.y) * size};
}

// Where no face shows: the top of the head and the shoulders say about where the head is, yet not
// as exactly as is wanted. Where the whole says about the same, it is the more exact of both.
Similarity by_outline_or(const Similarity& whole, const HeadPlace& second_head,
                         const HeadPicture& first, const HeadPicture& second) {
    constexpr double about_scale = 0.1;
    constexpr double about_shift = 0.1;  // of the head's height
    const auto outline = head_outline(first.bgr);
    const auto other = head_outline(second.bgr);
    if (!outline || !other) return whole;
    const auto lay = lay_outlines(*outline, *other);
    if (!lay) return whole;
    const double shift = distance((*lay)(second_head.middle), whole(second_head.middle));
    const bool about_the_same = std::abs(std::log(lay->scale() / whole.scale())) <= about_scale &&
                                shift <= about_shift * second_head.height * whole.scale();
    return about_the_same ? whole : *lay;
}

HeadAlignment search(HeadFinder& finder, const HeadPicture& first, const HeadPicture& second) {
    // From here on both hairdos are the same, or nearly; see the test.
    constexpr double same_hairdo = 0.55;
    const HeadPlace head = head_of(finder, first);
    const HeadPlace second_head = head_of(finder, second);
    const LaidHead whole = lay_head(first.bgr, second.bgr, head, second_head);
    const HeadAlignment by_whole{whole.second_onto_first, whole.agreement, false,
                                 whole.agreement >= HeadAlignment::least_agreement};
    if (whole.agreement >= same_hairdo) return by_whole;
    auto by_faces = lay_by_faces(finder, first.bgr, second.bgr, head, second_head);
    if (!by_faces && by_whole.certain) return by_whole;
    if (!by_faces) {
        return {by_outline_or(whole.second_onto_first, second_head, first, second), whole.agreement,
                false, false};
    }
    temper(*by_faces, head, first.bgr, second.bgr);
    return {by_faces->second_onto_first, whole.agreement, false, by_faces->sure};
}

std::optional<HeadAlignment> by_points(const HeadPicture& first, const HeadPicture& second) {
    if (!first.points || !second.points) return std::nullopt;
    const auto spots = [](const HeadPicture& picture) {
        const double aspect = aspect_of(picture.bgr);
        return std::array{spot_of(picture.points->top, aspect),
                          spot_of(picture.points->bottom, aspect)};
    };
    const auto lay = fit_similarity(spots(second), spots(first));
    if (!lay) return std::nullopt;
    return HeadAlignment{*lay, 1, true, true};
}

}  // namespace

HeadAlignment align_heads(HeadFinder& finder, const HeadPicture& first, const HeadPicture& second) {
    if (first.bgr.empty() || second.bgr.empty()) {
        throw std::invalid_argument("heads are aligned in two pictures, and one of them is empty");
    }
    if (const auto settled = by_points(first, second)) return *settled;
    return search(finder, first, second);
}

HeadPoints likely_points(HeadFinder& finder, const cv::Mat& bgr) {
    const HeadPlace head = found_head(finder, with_long_edge(bgr, finding_edge));
    const double aspect = aspect_of(bgr);
    return {point_of({head.middle.x, head.middle.y - head.height / 2}, aspect),
            point_of({head.middle.x, head.middle.y + head.height / 2}, aspect)};
}

}  // namespace quarterturn
