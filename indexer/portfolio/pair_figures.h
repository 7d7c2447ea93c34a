#pragma once
// What is measured between the two photos of a pair.

#include "indexer/image/decode.h"
#include "indexer/image/head_alignment.h"
#include "indexer/rules/fair_pair.h"
#include "indexer/store/library.h"

namespace quarterturn {

// The small picture as it is shown: upright and the right way round. Empty when it cannot be read.
cv::Mat picture_to_compare(Library& library, Decoder& decoder, const Photo& photo);

// How its photos are laid upon each other is kept with the pair, and found anew only when its
// photos, how they are shown or the points in them are others since: that takes up to a second. The
// points that she set by hand go before the head that is found. The photos are only read. Throws
// StoreError.
PairFigures measure_pair(Library& library, Decoder& decoder, HeadFinder& finder, const Pair& pair,
                         const Photo& first, const Photo& second);

// The same from the small pictures of two photos that are laid upon each other already; takes some
// hundredths of a second.
PairFigures measure_laid(Library& library, Decoder& decoder, const HeadAlignment& alignment,
                         const Photo& first, const Photo& second);

}  // namespace quarterturn
