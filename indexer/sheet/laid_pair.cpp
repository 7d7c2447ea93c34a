#include "indexer/sheet/laid_pair.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "indexer/rules/head_points.h"
#include "indexer/sheet/crop.h"
#include "indexer/sheet/photo_file.h"
#include "indexer/sheet/window_inside.h"

namespace quarterturn {
namespace {

constexpr int small_enough = 512;

double aspect_of_picture(const cv::Mat& picture) {
    return static_cast<double>(picture.cols) / picture.rows;
}

HeadPoints laid(const Similarity& lay, const HeadPoints& points, double from, double onto) {
    const auto move = [&](const PicturePoint& point) {
        return point_of(lay(spot_of(point, from)), onto);
    };
    return {move(points.top), move(points.bottom)};
}

void place_points(LaidPair& pair, const HeadPicture& first, const HeadPicture& second,
                  HeadFinder& finder) {
    const Similarity& lay = pair.alignment.second_onto_first;
    if (first.points) {
        pair.first_points = *first.points;
    } else if (second.points) {
        pair.first_points = laid(lay, *second.points, pair.second_aspect, pair.first_aspect);
    } else {
        pair.first_points = likely_points(finder, first.bgr);
    }
    pair.second_points = second.points ? *second.points
                                       : laid(lay.inverse(), pair.first_points, pair.first_aspect,
                                              pair.second_aspect);
}

double height_of_head(const HeadPoints& points, double aspect) {
    return distance(spot_of(points.top, aspect), spot_of(points.bottom, aspect));
}

// Where she has set both.
std::string reason_against_points(const LaidPair& pair, const HeadPicture& first,
                                  const HeadPicture& second) {
    if (!first.points || !second.points) return {};
    return reason_against_sizes(height_of_head(*first.points, pair.first_aspect),
                                height_of_head(*second.points, pair.second_aspect))
        .value_or("");
}

// A flaw moves the outline by centimetres.
std::string reason_for_no_hint(const LaidPair& pair, const Photo& first, const Photo& second) {
    if (!pair.alignment.sure()) {
        return "the heads may not lie right upon each other";
    }
    for (const Photo* photo : {&first, &second}) {
        if (photo->flaws.empty()) continue;
        return std::string("one photo is ") + std::string(word(photo->flaws.front()));
    }
    return {};
}

// A cell may be narrower than the head is beside its height: then the head goes before the border
// of the photo.
Box holding_width(const Box& window, const Box& head) {
    constexpr double air = 1.06;
    const double scale = std::max(1.0, air * head.width / window.width);
    if (scale == 1) return window;
    Box wide = shrunk_about(window, head, scale);
    wide.x = head.x + (head.width - wide.width) / 2;
    return wide;
}

}  // namespace

Decoded right_way_round(Library& library, Decoder& decoder, const Photo& photo, int long_edge) {
    Decoded decoded = decode_file(library.disk(), decoder, library.photo_file(photo),
                                  photo.file.orientation, long_edge, photo.file.sha256);
    if (!decoded.ok()) {
        decoded.refused = photo.file.name + ": " + decoded.refused;
    } else if (photo.tags.mirrored) {
        cv::flip(decoded.bgr, decoded.bgr, 1);
    }
    return decoded;
}

LaidPair lay_pair(Library& library, Decoder& decoder, HeadFinder& finder, const Photo& first,
                  const Photo& second) {
    const Decoded one = right_way_round(library, decoder, first, small_enough);
    const Decoded other = right_way_round(library, decoder, second, small_enough);
    LaidPair pair;
    for (const Decoded* decoded : {&one, &other}) {
        if (!decoded->ok()) pair.refused = decoded->refused;
    }
    if (!pair.refused.empty()) return pair;
    const HeadPicture first_picture{one.bgr, library.head_points().of(first.id)};
    const HeadPicture second_picture{other.bgr, library.head_points().of(second.id)};
    pair.first_aspect = aspect_of_picture(one.bgr);
    pair.second_aspect = aspect_of_picture(other.bgr);
    pair.points_against = reason_against_points(pair, first_picture, second_picture);
    if (pair.points_against.empty()) {
        pair.alignment = align_heads(finder, first_picture, second_picture);
    }
    place_points(pair, first_picture, second_picture, finder);
    pair.hair = hair_height(one.bgr, other.bgr, pair.alignment, pair.first_points);
    pair.accessory = accessory_place(one.bgr, other.bgr, pair.alignment, pair.first_points);
    pair.angle = first.tags.angle;
    pair.no_hint = reason_for_no_hint(pair, first, second);
    return pair;
}

Box head_of_both(const LaidPair& pair) {
    const Spot top = spot_of(pair.first_points.top, pair.first_aspect);
    const Spot bottom = spot_of(pair.first_points.bottom, pair.first_aspect);
    const double height = distance(top, bottom);
    constexpr double least_width = 0.85;  // of the height: the demo heads from the front
    constexpr double most_width = 1.3;    // with a bun, from the side
    const double middle = (top.x + bottom.x) / 2;
    const double left = std::clamp(pair.hair.left, middle - most_width * height / 2,
                                   middle - least_width * height / 2);
    const double right = std::clamp(pair.hair.right, middle + least_width * height / 2,
                                    middle + most_width * height / 2);
    const bool known = pair.hair.left < pair.hair.right;
    const double half = least_width * height / 2;
    return {known ? left : middle - half, std::min(top.y, bottom.y),
            known ? right - left : 2 * half, height};
}

Box shrunk_about(const Box& window, const Box& head, double scale) {
    const double x = head.x + head.width / 2;
    const double y = head.y + head.height / 2;
    return {x - (x - window.x) * scale, y - (y - window.y) * scale, window.width * scale,
            window.height * scale};
}

Box window_of(const LaidPair& pair, double cell_aspect) {
    const Box head = head_of_both(pair);
    HeadedPhoto photo{{pair.first_aspect, 1}, {}};
    photo.head = {head.x / pair.first_aspect, head.y, head.width / pair.first_aspect, head.height};
    const double share = common_head_share(std::array{photo}, cell_aspect);
    const Part part = part_around_head(photo, share, cell_aspect);
    const Box window{part.x * pair.first_aspect, part.y, part.width * pair.first_aspect,
                     part.height};
    const TwoLaid two{pair.first_aspect, pair.second_aspect, pair.alignment.second_onto_first};
    for (const double closer : {1.0, 0.95, 0.9, 0.85, 0.8}) {
        if (const auto inside = moved_inside(two, shrunk_about(window, head, closer), head)) {
            return *inside;
        }
    }
    return holding_width(window, head);
}

}  // namespace quarterturn
