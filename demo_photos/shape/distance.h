#pragma once

// Distance to simple solids, and soft unions of them: clay for the head.
// All are negative inside. Ellipsoids are close to, not exactly, true distance.

#include "demo_photos/shape/vec3.h"

namespace quarterturn::demo {

inline float to_ball(Vec3 p, Vec3 centre, float radius) {
    return length(p - centre) - radius;
}

inline float to_ellipsoid(Vec3 p, Vec3 centre, Vec3 r) {
    const Vec3 q = p - centre;
    const Vec3 s{q.x / r.x, q.y / r.y, q.z / r.z};
    const Vec3 t{s.x / r.x, s.y / r.y, s.z / r.z};
    const float k0 = length(s);
    const float k1 = length(t);
    return k1 > 1e-6F ? k0 * (k0 - 1.0F) / k1 : -std::min({r.x, r.y, r.z});
}

/// A rod from a to b whose radius runs from ra to rb.
inline float to_rod(Vec3 p, Vec3 a, Vec3 b, float ra, float rb) {
    const Vec3 ab = b - a;
    const float h = clamp01(dot(p - a, ab) / dot(ab, ab));
    return length(p - a - ab * h) - mix(ra, rb, h);
}

/// Union with a fillet of width k.
inline float join(float a, float b, float k) {
    const float h = std::max(k - std::abs(a - b), 0.0F) / k;
    return std::min(a, b) - h * h * k * 0.25F;
}

/// a with b carved out, the edge rounded over k.
inline float carve(float a, float b, float k) {
    return -join(-a, b, k);
}

}  // namespace quarterturn::demo
