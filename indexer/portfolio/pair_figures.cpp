#include "indexer/portfolio/pair_figures.h"

#include <numbers>
#include <opencv2/imgproc.hpp>

#include "indexer/image/light_difference.h"
#include "indexer/intake/thumbnails.h"
#include "indexer/portfolio/kept_laying.h"

namespace quarterturn {
namespace {

std::optional<PairFigures::Light> light_between(const cv::Mat& first, const cv::Mat& second) {
    const auto light = light_difference(first, second);
    if (!light) return std::nullopt;
    return PairFigures::Light{light->exposure_ev, light->white_balance_de00, light->at_least};
}

}  // namespace

cv::Mat picture_to_compare(Library& library, Decoder& decoder, const Photo& photo) {
    cv::Mat bgr = thumbnail(library, decoder, photo).bgr;
    if (!bgr.empty() && photo.tags.mirrored) cv::flip(bgr, bgr, 1);
    return bgr;
}

PairFigures measure_pair(Library& library, Decoder& decoder, HeadFinder& finder, const Pair& pair,
                         const Photo& first, const Photo& second) {
    const LaidPair laid = laid_as_kept(library, decoder, finder, pair, first, second);
    if (!laid.refused.empty()) return {};
    return measure_laid(library, decoder, laid.alignment, first, second);
}

PairFigures measure_laid(Library& library, Decoder& decoder, const HeadAlignment& alignment,
                         const Photo& first, const Photo& second) {
    const cv::Mat one = picture_to_compare(library, decoder, first);
    const cv::Mat other = picture_to_compare(library, decoder, second);
    if (one.empty() || other.empty()) return {};
    PairFigures figures;
    figures.light = light_between(one, other);
    if (!alignment.sure()) return figures;
    const Similarity& lay = alignment.second_onto_first;
    figures.size = 1 / lay.scale();
    figures.turn_degrees = -lay.turn() * 180 / std::numbers::pi;
    return figures;
}

}  // namespace quarterturn
