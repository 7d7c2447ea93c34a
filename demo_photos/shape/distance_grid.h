#pragma once

// A distance field sampled once, so that strands can ask it millions of times.

#include "demo_photos/shape/mesh.h"

namespace quarterturn::demo {

class DistanceGrid {
  public:
    DistanceGrid(const Field& field, Vec3 low, Vec3 high, float cell);

    /// Distance in cm, negative inside; beyond the box the edge's value.
    float at(Vec3 p) const;
    /// Unit vector pointing away from the surface.
    Vec3 outward(Vec3 p) const;

  private:
    Vec3 low_;
    float cell_;
    int nx_;
    int ny_;
    int nz_;
    std::vector<float> values_;
};

}  // namespace quarterturn::demo
