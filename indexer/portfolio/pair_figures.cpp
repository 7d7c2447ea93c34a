#include "indexer/portfolio/pair_figures.h"

#include <numbers>
#include <opencv2/imgproc.hpp>

#include "indexer/image/light_difference.h"
#include "indexer/intake/thumbnails.h"

namespace quarterturn {
namespace {

std::optional<PairFigures::Light> light_between(const cv::Mat& first, const cv::Mat& second) {
    const auto light = light_difference(first, second);
    if (!light) return std::nullopt;
    return PairFigures::Light{light->exposure_ev, light->white_balance_de00, light->at_least};
}

PairFigures figures_between(const cv::Mat& first, const cv::Mat& second,
                            const HeadAlignment& alignment) {
    PairFigures figures;
    figures.light = light_between(first, second);
    if (!alignment.sure()) return figures;
    figures.size = 1 / alignment.second_onto_first.scale();
    figures.turn_degrees = -alignment.second_onto_first.turn() * 180 / std::numbers::pi;
    return figures;
}

}  // namespace

cv::Mat picture_to_compare(Library& library, Decoder& decoder, const Photo& photo) {
    cv::Mat bgr = thumbnail(library, decoder, photo).bgr;
    if (!bgr.empty() && photo.tags.mirrored) cv::flip(bgr, bgr, 1);
    return bgr;
}

PairFigures measure_pair(Library& library, Decoder& decoder, HeadFinder& finder, const Photo& first,
                         const Photo& second) {
    const HeadPicture one{picture_to_compare(library, decoder, first),
                          library.head_points().of(first.id)};
    const HeadPicture other{picture_to_compare(library, decoder, second),
                            library.head_points().of(second.id)};
    if (one.bgr.empty() || other.bgr.empty()) return {};
    return figures_between(one.bgr, other.bgr, align_heads(finder, one, other));
}

PairFigures measure_laid(Library& library, Decoder& decoder, const HeadAlignment& alignment,
                         const Photo& first, const Photo& second) {
    const cv::Mat one = picture_to_compare(library, decoder, first);
    const cv::Mat other = picture_to_compare(library, decoder, second);
    if (one.empty() || other.empty()) return {};
    return figures_between(one, other, alignment);
}

}  // namespace quarterturn
