#pragma once
// How pairs are laid, kept with them, so that a wall of them needs no photo to be looked at again.

#include <map>
#include <optional>
#include <span>

#include "indexer/sheet/laid_pair.h"
#include "indexer/store/library.h"

namespace quarterturn {

// As they were laid last; those that never were, or not as they are now, are not in it. Only what
// window_of() and the drawing of both pictures need is said. Throws StoreError.
std::map<PairId, LaidPair> kept_layings(Library& library, std::span<const PairId> pairs);

struct LaidFrom {
    const Photo& first;
    const Photo& second;
    std::optional<HeadPoints> first_points;  // those that it was laid by
    std::optional<HeadPoints> second_points;
};

// Keeps it with each pair of these photos that has none. Where the records say something else by
// now than what it was laid from, nothing is kept. Throws StoreError.
void keep_laying(Library& library, const LaidFrom& from, const LaidPair& laid);

// As it is kept; where nothing is, it is laid now, from the pixels that every other place lays it
// from, and kept. Takes up to a second. Throws StoreError.
LaidPair laid_as_kept(Library& library, Decoder& decoder, HeadFinder& finder, const Pair& pair,
                      const Photo& first, const Photo& second);

}  // namespace quarterturn
