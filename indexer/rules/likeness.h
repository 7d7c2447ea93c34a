#pragma once
// Which pairs are most like a picture or another pair, and why.

#include <limits>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "indexer/record/hair_look.h"
#include "indexer/record/pair.h"

namespace quarterturn {

// How unlike two looks are in each, 0 for alike: sums of what differs, in units of about what two
// photos of one hairdo from one angle differ by. Measured on generated heads, half of such pairs
// lie below 0.6, 0.8 and 0.7 and nine of ten below 1.0, 1.2 and 2.4, half of all others
// above 3.6, 1.8 and 2.5; see tests/accuracy/hair_look_test.cpp.
struct HairDistance {
    double colour = 0;
    double texture = 0;
    double shape = 0;

    double whole() const { return (colour + texture + shape) / 3; }
};
// Both must be told.
HairDistance distance_between(const HairLook& one, const HairLook& other);

// One that may be like: the finished look of a pair.
struct LikeCandidate {
    PairId pair;
    LookId look;
    LookFacts facts;
    HairLook hair;
};

struct LikePair {
    PairId pair;
    double unlikeness = 0;  // the smaller the more alike; below 1 very much so
    std::vector<std::string>
        reasons;  // "low bun as well", "hair of the same colour", the first first
};

// The likest first, so many at most; of each look only its likest pair. By the picture, where both
// are told, and by facts: half a step for each fact that both have with no value in common. What
// can be compared in neither way is left out. `facts` is empty for a picture from elsewhere.
std::vector<LikePair> more_like(const LookFacts& facts, const HairLook& hair,
                                std::span<const LikeCandidate> candidates,
                                std::size_t at_most = std::numeric_limits<std::size_t>::max());

// Puts them into the order of what they cannot be more alike than, whatever their facts are, and
// answers that of each.
std::vector<double> order_by_least_unlikeness(const HairLook& hair,
                                              std::vector<LikeCandidate>& candidates);

}  // namespace quarterturn
