#pragma once
// A pair as it is shown large: its pictures, what stands below them, and how they are laid.

#include "indexer/record/pair.h"
#include "ui/two_heads/laid_pairs.h"
#include "ui/two_heads/pair_view.h"

namespace quarterturn {

class Session;

// Asks for both pictures about as sharp as a view of this height shows them.
void want_large(Session& session, const QWidget& view, const TwoPhotos& two);

// Shows what is at hand. Pictures whose heads do not surely lie upon each other stand whole, beside
// each other. What differs is marked where both show the finished look. `dim`: with half of their
// light.
void show_large(Session& session, PairView& view, const Pair& pair, const TwoPhotos& two,
                const LaidAndMeasured* laid, bool dim = false);

}  // namespace quarterturn
