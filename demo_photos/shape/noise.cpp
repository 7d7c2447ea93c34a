#include "demo_photos/shape/noise.h"

namespace quarterturn::demo {

std::uint64_t Chance::next() {
    state_ += 0x9E3779B97F4A7C15ULL;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31U);
}

float Chance::unit() {
    return static_cast<float>(next() >> 40U) * (1.0F / 16777216.0F);
}

float Chance::bell() {
    float sum = 0.0F;
    for (int i = 0; i < 4; ++i) {
        sum += unit();
    }
    return (sum - 2.0F) * 1.7320508F;
}

Vec3 Chance::in_ball() {
    for (;;) {
        const Vec3 p{between(-1, 1), between(-1, 1), between(-1, 1)};
        if (dot(p, p) <= 1.0F) {
            return p;
        }
    }
}

std::uint32_t hash_of(std::uint32_t v) {
    v ^= v >> 16U;
    v *= 0x7feb352dU;
    v ^= v >> 15U;
    v *= 0x846ca68bU;
    v ^= v >> 16U;
    return v;
}

float hash_unit(std::uint32_t index, std::uint32_t seed) {
    return static_cast<float>(hash_of(index * 0x9E3779B9U + hash_of(seed + 1U)) >> 8U) *
           (1.0F / 16777216.0F);
}

namespace {

float corner(int x, int y, int z) {
    const auto mixed = static_cast<std::uint32_t>(x) * 73856093U ^
                       static_cast<std::uint32_t>(y) * 19349663U ^
                       static_cast<std::uint32_t>(z) * 83492791U;
    return static_cast<float>(hash_of(mixed) >> 8U) * (2.0F / 16777216.0F) - 1.0F;
}

}  // namespace

float noise(Vec3 p) {
    const float fx = std::floor(p.x);
    const float fy = std::floor(p.y);
    const float fz = std::floor(p.z);
    const int x = static_cast<int>(fx);
    const int y = static_cast<int>(fy);
    const int z = static_cast<int>(fz);
    const auto ease = [](float t) { return t * t * (3.0F - 2.0F * t); };
    const float u = ease(p.x - fx);
    const float v = ease(p.y - fy);
    const float w = ease(p.z - fz);
    const auto row = [&](int dy, int dz) {
        return mix(corner(x, y + dy, z + dz), corner(x + 1, y + dy, z + dz), u);
    };
    return mix(mix(row(0, 0), row(1, 0), v), mix(row(0, 1), row(1, 1), v), w);
}

Vec3 noise3(Vec3 p) {
    return {noise(p), noise(p + Vec3{37.2F, 11.7F, 5.1F}), noise(p + Vec3{-19.4F, 53.8F, 23.9F})};
}

}  // namespace quarterturn::demo
