#pragma once

// What a lit point looks like. All colours are linear light.

#include "demo_photos/light/lights.h"
#include "demo_photos/shape/mesh.h"

namespace quarterturn::demo {

/// Reflectance of one strand's point to a colour. Lobes after Marschner and
/// others (2003): white light off the surface tilted to the root, coloured
/// light from within tilted to the tip, and light passing through.
Vec3 shade_hair(Vec3 colour, float shine, Vec3 along, Vec3 outward, Vec3 to_eye, const Room& room,
                const Reach& reach);

struct SurfacePoint {
    Vec3 point;
    Vec3 normal;
    Vec3 tint;
    Material material;
};

struct SkinTone {
    Vec3 skin{0.60F, 0.36F, 0.26F};
    Vec3 lips{0.46F, 0.16F, 0.15F};
    Vec3 cheek{0.62F, 0.27F, 0.22F};
    Vec3 iris{0.10F, 0.16F, 0.12F};
    Vec3 cape{0.30F, 0.33F, 0.36F};
    Vec3 scalp{0.2F, 0.12F, 0.08F};
    float face_width = 1.0F;
};

Vec3 shade_surface(const SurfacePoint& at, Vec3 to_eye, const Room& room, const Reach& reach,
                   const SkinTone& tone, float lips_distance);

}  // namespace quarterturn::demo
