#pragma once

// Small vector arithmetic for the renderer. All lengths are centimetres.
// Axes are the client's own: +x is her left, +y is up, +z is where she looks.

#include <algorithm>
#include <cmath>

namespace quarterturn::demo {

inline constexpr float pi = 3.14159265358979F;

struct Vec3 {
    float x{};
    float y{};
    float z{};
};

inline Vec3 operator+(Vec3 a, Vec3 b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}
inline Vec3 operator-(Vec3 a, Vec3 b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
inline Vec3 operator-(Vec3 a) {
    return {-a.x, -a.y, -a.z};
}
inline Vec3 operator*(Vec3 a, float s) {
    return {a.x * s, a.y * s, a.z * s};
}
inline Vec3 operator*(float s, Vec3 a) {
    return a * s;
}
inline Vec3 operator*(Vec3 a, Vec3 b) {
    return {a.x * b.x, a.y * b.y, a.z * b.z};
}
inline Vec3 operator/(Vec3 a, float s) {
    return a * (1.0F / s);
}
inline Vec3& operator+=(Vec3& a, Vec3 b) {
    return a = a + b;
}
inline Vec3& operator-=(Vec3& a, Vec3 b) {
    return a = a - b;
}

inline float dot(Vec3 a, Vec3 b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
inline Vec3 cross(Vec3 a, Vec3 b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline float length(Vec3 a) {
    return std::sqrt(dot(a, a));
}
inline Vec3 normalize(Vec3 a) {
    const float l = length(a);
    return l > 1e-12F ? a / l : Vec3{0.0F, 1.0F, 0.0F};
}
inline Vec3 lerp(Vec3 a, Vec3 b, float t) {
    return a + (b - a) * t;
}
inline float mix(float a, float b, float t) {
    return a + (b - a) * t;
}
inline float clamp01(float v) {
    return std::clamp(v, 0.0F, 1.0F);
}
inline float smoothstep(float low, float high, float v) {
    const float t = clamp01((v - low) / (high - low));
    return t * t * (3.0F - 2.0F * t);
}
inline float degrees(float d) {
    return d * pi / 180.0F;
}

/// The part of `v` that lies in the plane with unit normal `n`.
inline Vec3 along_surface(Vec3 v, Vec3 n) {
    return v - n * dot(v, n);
}

/// A unit vector at right angles to unit vector `n`.
inline Vec3 any_perpendicular(Vec3 n) {
    return normalize(cross(n, std::abs(n.y) < 0.9F ? Vec3{0, 1, 0} : Vec3{1, 0, 0}));
}

}  // namespace quarterturn::demo
