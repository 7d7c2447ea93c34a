#pragma once

#include "demo_photos/hair/styles.h"
#include "demo_photos/shape/mesh.h"

namespace quarterturn::demo {

/// Leaf comb, pins or flowers where the plan wears them, resting on the hair; a mesh a material.
std::vector<Mesh> make_accessory(const HairPlan& plan, const DistanceGrid& solid,
                                 const StrandSet& hair);

/// The leaf comb: worn, its teeth go into the hair; else they lie flat.
std::vector<Mesh> make_leaf_comb(Vec3 at, Vec3 along, Vec3 outward, float size, bool worn);

/// One clip through every pinned curl.
Mesh make_clips(const std::vector<CurlSeat>& seats);

/// The post the bust stands on and its clamp.
std::vector<Mesh> make_stand();

}  // namespace quarterturn::demo
