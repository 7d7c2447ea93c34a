#pragma once

// The solid part of a head, worked out once and shared by all its hair styles.

#include <memory>

#include "demo_photos/shape/distance_grid.h"
#include "demo_photos/shape/head_shape.h"

namespace quarterturn::demo {

struct Clay {
    HeadShape shape;
    DistanceGrid solid;  ///< what hair falls on and what casts shadow
    Mesh skin;
    Mesh cape;
    Mesh skull;
};

/// `fineness` as for `Head`.
std::shared_ptr<const Clay> mould(const Face& face, float fineness);

}  // namespace quarterturn::demo
