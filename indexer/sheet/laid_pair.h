#pragma once
// Two photos of one angle with both heads equally large and in the same place: at the trial and
// today, or before and after. The files stay as they are.

#include <string>
#include <vector>

#include "indexer/image/accessory_place.h"
#include "indexer/image/decode.h"
#include "indexer/image/hair_height.h"
#include "indexer/sheet/page.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct LaidPair {
    std::string refused;  // a sentence when one of them cannot be shown: then the rest says nothing
    // A sentence when the points that she set in them cannot both be right: then nothing is sure.
    std::string points_against;
    double first_aspect = 1;  // width over height, upright
    double second_aspect = 1;
    HeadAlignment alignment;
    // Where the head stands: as she has set it, else as it was found.
    HeadPoints first_points;
    HeadPoints second_points;
    std::optional<Angle> angle;  // of the first
    HairHeight hair;             // a hint, no judgement
    AccessoryPlace accessory;    // another
    std::string no_hint;         // why neither can be told; empty when they can

    bool hair_differs() const { return no_hint.empty() && hair.differs(); }
    bool accessory_differs() const { return no_hint.empty() && accessory.differs(); }
};

// What differs, a sentence each: "The hair stands about 1.5 cm higher than at the trial, as far as
// the photos can tell.", "The accessory sits about 2 cm higher and 1 cm further to her left than at
// the trial, as far as the photos can tell."; or that it cannot be told. Where nothing differs by
// more than is sure, nothing is said.
std::vector<std::string> hint_words(const LaidPair& pair);

// Decodes both, small. Throws StoreError.
LaidPair lay_pair(Library& library, Decoder& decoder, HeadFinder& finder, const Photo& first,
                  const Photo& second);

// Upright and the right way round, its long edge `long_edge` or somewhat more. Empty, with
// `refused` telling why, when it cannot be decoded.
Decoded right_way_round(Library& library, Decoder& decoder, const Photo& photo, int long_edge);

// What of both is shown in a cell of this width over height: the head with air around it, in
// heights of the first picture. Moved and drawn a little closer where both pictures then fill it,
// unless the head would be cut.
Box window_of(const LaidPair& pair, double cell_aspect);

// The head as it stands in the first picture, in heights of it, as wide as both outlines where they
// are known.
Box head_of_both(const LaidPair& pair);

// A window `scale` times as large, about a point as far down in it as in the head, so that the air
// above stays.
Box shrunk_about(const Box& window, const Box& head, double scale);

}  // namespace quarterturn
