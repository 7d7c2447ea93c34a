#pragma once
// That something was erased: the fact and the day, and nothing of whom.

#include <cstdint>

#include "indexer/record/id.h"
#include "indexer/record/time.h"

namespace quarterturn {

using ErasureId = Id<struct ErasureRow>;

struct Erasure {
    ErasureId id;
    Date on{};
    std::int64_t photos = 0;
    std::int64_t looks = 0;
    bool finished = false;  // false while files of it may be left on the disk

    bool operator==(const Erasure&) const = default;
};

}  // namespace quarterturn
