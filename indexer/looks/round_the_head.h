#pragma once
// The photos of a look as they lie round the head, and those that still wait for their place.

#include <vector>

#include "indexer/looks/look_state.h"

namespace quarterturn {

// One photo, or the sharpest of a burst and the other frames behind it.
struct WaitingPhoto {
    Photo photo;
    std::vector<PhotoId> others;

    std::vector<PhotoId> all() const;  // its own first
};

struct RoundTheHead {
    LookState state;
    std::vector<Look> looks;  // of the same client, in the order they were added
    // In the order of time. A photo that no look was named for waits with each look of its sitting.
    std::vector<WaitingPhoto> waiting;
};

// Throws StoreError when there is no such look.
RoundTheHead round_the_head(Library& library, LookId look);

}  // namespace quarterturn
