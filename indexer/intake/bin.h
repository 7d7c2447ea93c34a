#pragma once
// The bin: what she puts into it stands in no list, look, pair, board or count any more, but file
// and record stay whole and come back as they were. What has lain there for kept_in_bin goes for
// good (erasure/empty_bin.h). A photo that is brought in again while it lies there stays there.

#include <chrono>
#include <span>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

inline constexpr std::chrono::days kept_in_bin{30};  // common practice: time for a second thought

// On which day a photo goes for good that lies in the bin since that day.
Date leaves_bin(Date since);

// One action that can be undone. Throws StoreError, and moves nothing, when a photo is not there or
// is sealed: a signed-off look is the word that it can be repeated, so it is opened again first.
void put_into_bin(Library& library, std::span<const PhotoId> photos, Date today);

// One action that can be undone. Throws StoreError when a photo is not in the bin.
void take_out_of_bin(Library& library, std::span<const PhotoId> photos);

struct LeavingBin {
    Date on{};
    int photos = 0;

    bool operator==(const LeavingBin&) const = default;
};

// When how many go for good, the soonest first. Throws StoreError.
std::vector<LeavingBin> leaving_bin(Library& library);

}  // namespace quarterturn
