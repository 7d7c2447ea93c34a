#include "demo_photos/shape/distance_grid.h"

namespace quarterturn::demo {

DistanceGrid::DistanceGrid(const Field& field, Vec3 low, Vec3 high, float cell)
    : low_(low),
      cell_(cell),
      nx_(static_cast<int>((high.x - low.x) / cell) + 2),
      ny_(static_cast<int>((high.y - low.y) / cell) + 2),
      nz_(static_cast<int>((high.z - low.z) / cell) + 2) {
    values_.reserve(static_cast<std::size_t>(nx_) * static_cast<std::size_t>(ny_) *
                    static_cast<std::size_t>(nz_));
    for (int k = 0; k < nz_; ++k) {
        for (int j = 0; j < ny_; ++j) {
            for (int i = 0; i < nx_; ++i) {
                values_.push_back(field(low + Vec3{static_cast<float>(i), static_cast<float>(j),
                                                   static_cast<float>(k)} *
                                                  cell));
            }
        }
    }
}

float DistanceGrid::at(Vec3 p) const {
    const Vec3 q = (p - low_) / cell_;
    const float x = std::clamp(q.x, 0.0F, static_cast<float>(nx_) - 1.001F);
    const float y = std::clamp(q.y, 0.0F, static_cast<float>(ny_) - 1.001F);
    const float z = std::clamp(q.z, 0.0F, static_cast<float>(nz_) - 1.001F);
    const int i = static_cast<int>(x);
    const int j = static_cast<int>(y);
    const int k = static_cast<int>(z);
    const float u = x - static_cast<float>(i);
    const float v = y - static_cast<float>(j);
    const float w = z - static_cast<float>(k);
    const auto row = [&](int dj, int dk) {
        const auto base = (static_cast<std::size_t>(k + dk) * static_cast<std::size_t>(ny_) +
                           static_cast<std::size_t>(j + dj)) *
                              static_cast<std::size_t>(nx_) +
                          static_cast<std::size_t>(i);
        return mix(values_[base], values_[base + 1], u);
    };
    return mix(mix(row(0, 0), row(1, 0), v), mix(row(0, 1), row(1, 1), v), w);
}

Vec3 DistanceGrid::outward(Vec3 p) const {
    const float e = cell_;
    const float a = at(p + Vec3{e, -e, -e});
    const float b = at(p + Vec3{-e, -e, e});
    const float c = at(p + Vec3{-e, e, -e});
    const float d = at(p + Vec3{e, e, e});
    return normalize({a - b - c + d, -a - b + c + d, -a + b - c + d});
}

}  // namespace quarterturn::demo
