#pragma once

// Growing a strand step by step: it turns towards where the style wants it,
// is pushed out of the head, and lies at its own height above the skin.

#include "demo_photos/hair/hair_plan.h"

#include <functional>

namespace quarterturn::demo {

/// Where the strand is now.
struct Tip {
    Vec3 point;
    Vec3 outward;  ///< away from the head
    float height;  ///< cm above skin or cape
    float grown;   ///< cm of hair so far
};

struct Growth {
    float length = 30.0F;
    float step = 0.45F;
    float turn = 0.35F;  ///< share of the way to the wanted direction in a step
    float cling = 0.0F;  ///< 0: only kept out of the head; 1: held at its own height
    std::function<Vec3(const Tip&)> wanted;
    std::function<float(const Tip&)> rest_height;  ///< cm above the skin
    std::function<bool(const Tip&)> done;          ///< may be empty
};

std::vector<Vec3> grow(const HairGround& ground, const Root& root, Vec3 first_direction,
                       const Growth& growth);

/// Pulls each strand towards the nearest of `locks` chosen strands, more
/// towards the tip, and says which lock each belongs to.
std::vector<std::uint32_t> gather_into_locks(std::vector<std::vector<Vec3>>& strands,
                                             const std::vector<Root>& roots, std::uint32_t locks,
                                             float strength, Chance& chance);

struct Wave {
    float width = 0.8F;   ///< cm to either side
    float length = 7.0F;  ///< cm from crest to crest
    float starts = 6.0F;  ///< cm from the root
    float phase = 0.0F;
    float roundness = 0.6F;  ///< 0: flat wave, 1: corkscrew
};

void bend_into_wave(std::vector<Vec3>& strand, const HairGround& ground, const Wave& wave);

/// A few hairs that left their lock.
void add_strays(StrandSet& set, float share, float reach, const HairPlan& plan);

}  // namespace quarterturn::demo
