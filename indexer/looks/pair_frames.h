#pragma once
// The photos of a pair and those that could stand in their place.

#include <map>
#include <optional>
#include <vector>

#include "indexer/record/pair.h"
#include "indexer/store/library.h"

namespace quarterturn {

struct PairFrames {
    std::vector<Photo> first;
    std::vector<Photo> second;
};

// On each side the photo that stands there and all that she may choose instead, in the order of
// their moments: of the same look, stage and angle, and of a trial or wedding day as the pair asks.
// Throws StoreError.
PairFrames frames_for(Library& library, const Pair& pair);

// One frame of a client's progress.
struct ProgressFrame {
    Photo photo;
    std::optional<SittingKind> sitting;  // nothing for a photo of none

    bool operator==(const ProgressFrame&) const = default;
};

// One client across her sittings, from one angle: of each sitting (without one: of each day),
// look and stage the sharpest usable frame, the oldest first, those of unknown moment last. Angles
// without a frame are not there. Throws StoreError.
std::map<Angle, std::vector<ProgressFrame>> progress_of(Library& library, ClientId client);

}  // namespace quarterturn
