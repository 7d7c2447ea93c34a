#include "indexer/sheet/laid_pair.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "indexer/sheet/crop.h"
#include "indexer/sheet/photo_file.h"

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

// A flaw moves the outline by centimetres.
std::string reason_for_no_hint(const LaidPair& pair, const Photo& first, const Photo& second) {
    if (!pair.alignment.sure()) {
        return "the heads may not lie right upon each other";
    }
    for (const Photo* photo : {&first, &second}) {
        if (photo->flaws.empty()) continue;
        return std::string("one photo is ") + std::string(word(photo->flaws.front()));
    }
    return pair.hair.centimetres ? "" : "the hair does not stand out from the background";
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
    pair.alignment = align_heads(finder, first_picture, second_picture);
    place_points(pair, first_picture, second_picture, finder);
    pair.hair = hair_height(one.bgr, other.bgr, pair.alignment, pair.first_points);
    pair.no_hint = reason_for_no_hint(pair, first, second);
    return pair;
}

std::string hint_words(const LaidPair& pair) {
    if (!pair.no_hint.empty()) {
        return "Whether the hair stands as high cannot be told: " + pair.no_hint + ".";
    }
    if (!pair.hair.differs()) return {};
    const int halves = static_cast<int>(std::lround(std::abs(*pair.hair.centimetres) * 2));
    const std::string size = std::to_string(halves / 2) + (halves % 2 == 1 ? ".5" : "");
    return "The hair stands about " + size + " cm " +
           (*pair.hair.centimetres > 0 ? "higher" : "lower") +
           " than at the trial, as far as the photos can tell.";
}

Box window_of(const LaidPair& pair, double cell_aspect) {
    const Spot top = spot_of(pair.first_points.top, pair.first_aspect);
    const Spot bottom = spot_of(pair.first_points.bottom, pair.first_aspect);
    const double height = distance(top, bottom);
    const double width = height * 0.85;  // of the demo heads with their hair, all angles
    HeadedPhoto photo{{pair.first_aspect, 1}, {}};
    photo.head = {((top.x + bottom.x) / 2 - width / 2) / pair.first_aspect,
                  std::min(top.y, bottom.y), width / pair.first_aspect, height};
    const double share = common_head_share(std::array{photo}, cell_aspect);
    const Part part = part_around_head(photo, share, cell_aspect);
    return {part.x * pair.first_aspect, part.y, part.width * pair.first_aspect, part.height};
}

}  // namespace quarterturn
