#pragma once

// The training head as a distance field. Proportions follow common drawing
// practice: eyes half way down the head, brow, nose base and chin in thirds.
// The origin lies between the ear canals; the crown of the skull is at y = 12.3,
// the chin at y = -9.4, the tip of the nose at z = 11.4.

#include "demo_photos/shape/vec3.h"

namespace quarterturn::demo {

/// How one head differs from another; 1 is the middle of each.
struct Face {
    float width = 1.0F;
    float jaw = 1.0F;
    float nose = 1.0F;
    float lips = 1.0F;
};

class HeadShape {
  public:
    explicit HeadShape(Face face) : face_(face) {}

    /// Head, neck and upper chest.
    float skin(Vec3 p) const;
    /// Skull alone: no nose, lips, ears or lids. Hair lies on this.
    float skull(Vec3 p) const;
    /// The cloth cape over the bust.
    float cape(Vec3 p) const;
    /// Everything hair can fall on: skull, face, neck and cape.
    float solid(Vec3 p) const { return std::min(skin(p), cape(p)); }
    /// Distance to the flesh of the lips, to know where colour goes.
    float lips(Vec3 p) const;

    /// side +1 is her left eye, -1 her right.
    Vec3 eye_centre(float side) const { return {side * 3.08F * face_.width, 1.25F, 7.02F}; }
    static constexpr float eye_radius = 1.27F;
    /// Height of the upper and lower lid edge over x measured from the eye's centre
    /// (outwards is positive).
    static float upper_lid(float out);
    static float lower_lid(float out);

  private:
    float ear(Vec3 p) const;
    float nose(Vec3 p) const;

    Face face_;
};

}  // namespace quarterturn::demo
