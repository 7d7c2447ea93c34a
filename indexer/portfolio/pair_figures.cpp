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

struct TwoPictures {
    HeadPicture first;
    HeadPicture second;

    bool empty() const { return first.bgr.empty() || second.bgr.empty(); }
};

TwoPictures pictures_of(Library& library, Decoder& decoder, const Photo& first,
                        const Photo& second) {
    return {{picture_to_compare(library, decoder, first), library.head_points().of(first.id)},
            {picture_to_compare(library, decoder, second), library.head_points().of(second.id)}};
}

PairAlignment as_kept(const HeadAlignment& found) {
    const Similarity& lay = found.second_onto_first;
    return {lay.along, lay.across, lay.x, lay.y, found.sure()};
}

PairAlignment found_alignment(HeadFinder& finder, const TwoPictures& two) {
    return as_kept(align_heads(finder, two.first, two.second));
}

PairFigures figures_of(const TwoPictures& two, const PairAlignment& alignment) {
    PairFigures figures;
    figures.light = light_between(two.first.bgr, two.second.bgr);
    if (!alignment.sure) return figures;
    const Similarity lay{alignment.along, alignment.across, alignment.x, alignment.y};
    figures.size = 1 / lay.scale();
    figures.turn_degrees = -lay.turn() * 180 / std::numbers::pi;
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
    const TwoPictures two = pictures_of(library, decoder, first, second);
    if (two.empty()) return {};
    return figures_of(two, found_alignment(finder, two));
}

PairFigures measure_pair(Library& library, Decoder& decoder, HeadFinder& finder, const Pair& pair,
                         const Photo& first, const Photo& second) {
    const TwoPictures two = pictures_of(library, decoder, first, second);
    if (two.empty()) return {};
    auto alignment = library.pairs().alignment(pair, head_alignment_version);
    if (!alignment) {
        alignment = found_alignment(finder, two);
        library.pairs().keep_alignment(pair, head_alignment_version, *alignment);
    }
    return figures_of(two, *alignment);
}

PairFigures measure_laid(Library& library, Decoder& decoder, const HeadAlignment& alignment,
                         const Photo& first, const Photo& second) {
    const TwoPictures two = pictures_of(library, decoder, first, second);
    return two.empty() ? PairFigures{} : figures_of(two, as_kept(alignment));
}

}  // namespace quarterturn
