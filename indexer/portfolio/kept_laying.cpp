#include "indexer/portfolio/kept_laying.h"

#include <array>

#include "indexer/store/laid_pair_table.h"

namespace quarterturn {
namespace {

LaidPair as_laid(const KeptLaying& kept) {
    LaidPair laid;
    const PairAlignment& alignment = kept.alignment;
    laid.first_aspect = kept.first_aspect;
    laid.second_aspect = kept.second_aspect;
    laid.alignment.second_onto_first = {alignment.along, alignment.across, alignment.x,
                                        alignment.y};
    laid.alignment.certain = alignment.sure;
    laid.first_points = kept.first_points;
    laid.hair.left = kept.hair_left;
    laid.hair.right = kept.hair_right;
    return laid;
}

KeptLaying as_kept_laying(const LaidPair& laid) {
    const Similarity& lay = laid.alignment.second_onto_first;
    return {{lay.along, lay.across, lay.x, lay.y, laid.alignment.sure()},
            laid.first_aspect,
            laid.second_aspect,
            laid.first_points,
            laid.hair.left,
            laid.hair.right};
}

bool as_it_was(Library& library, const Photo& photo, const std::optional<HeadPoints>& points) {
    const auto now = library.photos().find(photo.id);
    return now && now->tags.mirrored == photo.tags.mirrored &&
           library.head_points().of(photo.id) == points;
}

}  // namespace

std::map<PairId, LaidPair> kept_layings(Library& library, std::span<const PairId> pairs) {
    std::map<PairId, LaidPair> layings;
    for (const auto& [pair, kept] :
         LaidPairTable(library.database(), head_alignment_version).of(pairs)) {
        layings.emplace(pair, as_laid(kept));
    }
    return layings;
}

void keep_laying(Library& library, const LaidFrom& from, const LaidPair& laid) {
    LaidPairTable table(library.database(), head_alignment_version);
    const auto pairs = table.to_keep(from.first.id, from.second.id);
    if (pairs.empty() || library.only_to_look()) return;
    Transaction at_once(library.database());
    if (!as_it_was(library, from.first, from.first_points) ||
        !as_it_was(library, from.second, from.second_points)) {
        return;
    }
    for (const PairId pair : pairs) table.keep(pair, as_kept_laying(laid));
    at_once.commit();
}

LaidPair laid_as_kept(Library& library, Decoder& decoder, HeadFinder& finder, const Pair& pair,
                      const Photo& first, const Photo& second) {
    const auto kept = kept_layings(library, std::array{pair.id});
    if (!kept.empty()) return kept.begin()->second;
    const LaidFrom from{first, second, library.head_points().of(first.id),
                        library.head_points().of(second.id)};
    LaidPair laid = lay_pair(library, decoder, finder, first, second);
    if (laid.refused.empty()) keep_laying(library, from, laid);
    return laid;
}

}  // namespace quarterturn
