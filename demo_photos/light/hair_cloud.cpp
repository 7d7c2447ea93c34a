#include "demo_photos/light/lights.h"

#include <limits>

namespace quarterturn::demo {

namespace {

constexpr Vec3 low{-18.5F, -31.0F, -19.5F};
/// How fast a cubic centimetre filled with hair dims light; chosen by eye.
constexpr float dimming = 0.011F;
constexpr float per_voxel = dimming / (HairCloud::voxel * HairCloud::voxel * HairCloud::voxel);

}  // namespace

HairCloud::HairCloud(const DistanceGrid& solid)
    : solid_(solid),
      density_(static_cast<std::size_t>(nx) * ny * nz, 0.0F),
      block_(density_.size()) {
    for (std::size_t at = 0; at < block_.size(); ++at) {
        block_[at] = 2.2F * std::max(0.0F, -solid_.at(centre_of(at)) - 0.25F);
    }
}

void HairCloud::add(const StrandSet& set) {
    for (std::size_t s = 0; s < set.count(); ++s) {
        for (std::uint32_t i = set.starts[s]; i + 1 < set.starts[s + 1]; ++i) {
            const Vec3 a = set.points[i];
            const Vec3 b = set.points[i + 1];
            const Vec3 q = ((a + b) * 0.5F - low) / voxel;
            const int x = static_cast<int>(q.x);
            const int y = static_cast<int>(q.y);
            const int z = static_cast<int>(q.z);
            if (q.x < 0 || q.y < 0 || q.z < 0 || x >= nx || y >= ny || z >= nz) {
                continue;
            }
            density_[index(x, y, z)] += length(b - a) * set.looks[s].width / 0.0085F;
        }
    }
}

Vec3 HairCloud::centre_of(std::size_t at) const {
    const auto i = at % nx;
    const auto j = (at / nx) % ny;
    const auto k = at / (static_cast<std::size_t>(nx) * ny);
    return low + Vec3{static_cast<float>(i) + 0.5F, static_cast<float>(j) + 0.5F,
                      static_cast<float>(k) + 0.5F} *
                     voxel;
}

void HairCloud::measure_dimming() {
    dims_.resize(density_.size());
    for (std::size_t at = 0; at < dims_.size(); ++at) {
        dims_[at] = density_[at] * per_voxel + block_[at];
        if (dims_[at] <= 0.0F) {
            continue;
        }
        const Vec3 p = centre_of(at);
        first_ = {std::min(first_.x, p.x), std::min(first_.y, p.y), std::min(first_.z, p.z)};
        last_ = {std::max(last_.x, p.x), std::max(last_.y, p.y), std::max(last_.z, p.z)};
    }
}

float HairCloud::leaving(Vec3 from, Vec3 towards) const {
    const auto along = [](float at, float way, float least, float most) {
        if (way == 0.0F) {
            return std::numeric_limits<float>::max();
        }
        return ((way > 0.0F ? most + voxel : least - voxel) - at) / way;
    };
    return std::min({along(from.x, towards.x, first_.x, last_.x),
                     along(from.y, towards.y, first_.y, last_.y),
                     along(from.z, towards.z, first_.z, last_.z)});
}

float HairCloud::passing(Vec3 from, Vec3 towards, float reach, float step) const {
    float through = 0.0F;
    const float end = std::min(reach, leaving(from, towards) + step);
    for (float t = step * 0.6F; t < end; t += step) {
        const Vec3 p = from + towards * t;
        const Vec3 q = (p - low) / voxel;
        const int x = static_cast<int>(q.x);
        const int y = static_cast<int>(q.y);
        const int z = static_cast<int>(q.z);
        if (q.x < 0 || q.y < 0 || q.z < 0 || x >= nx || y >= ny || z >= nz) {
            break;
        }
        const std::size_t at = index(x, y, z);
        through += (t > 0.5F ? dims_[at] : density_[at] * per_voxel) * step;
        if (through > 5.0F) {
            return 0.0F;
        }
    }
    return std::exp(-through);
}

void HairCloud::measure_openness() {
    measure_dimming();
    std::vector<std::uint8_t> wanted(density_.size(), 0);
    for (int k = 1; k + 1 < nz; ++k) {
        for (int j = 1; j + 1 < ny; ++j) {
            for (int i = 1; i + 1 < nx; ++i) {
                const std::size_t at = index(i, j, k);
                const float d = solid_.at(centre_of(at));
                if (density_[at] <= 0.0F && std::abs(d) > 0.6F) {
                    continue;
                }
                for (int n = 0; n < 27; ++n) {
                    wanted[index(i + n % 3 - 1, j + n / 3 % 3 - 1, k + n / 9 - 1)] = 1;
                }
            }
        }
    }
    used_.clear();
    for (std::size_t at = 0; at < wanted.size(); ++at) {
        if (wanted[at] != 0) {
            used_.push_back(static_cast<std::uint32_t>(at));
        }
    }
    // Directions on a Fibonacci sphere; above counts more than below.
    constexpr int rays = 22;
    reach_.assign(density_.size(), {});
    for (const auto at : used_) {
        const Vec3 p = centre_of(at);
        float sum = 0.0F;
        float most = 0.0F;
        for (int r = 0; r < rays; ++r) {
            const float y = 1.0F - 2.0F * (static_cast<float>(r) + 0.5F) / rays;
            const float a = 2.3999632F * static_cast<float>(r);
            const float s = std::sqrt(1.0F - y * y);
            const float weight = 0.75F + 0.25F * y;
            sum += weight * passing(p, {s * std::cos(a), y, s * std::sin(a)}, 9.0F, 0.62F);
            most += weight;
        }
        // A surface sees half the room.
        reach_[at].open = std::min(1.0F, 2.0F * sum / most);
    }
}

void HairCloud::measure_light(Slot slot, Vec3 towards) {
    float Reach::*const lit = slot == Slot::key    ? &Reach::key
                              : slot == Slot::fill ? &Reach::fill
                                                   : &Reach::rim;
    // A light has some width: several rays make its shadow soft.
    const Vec3 u = any_perpendicular(towards);
    const Vec3 v = cross(towards, u);
    const std::array<Vec3, 4> all_rays{
        normalize(towards + u * 0.13F + v * 0.05F), normalize(towards - u * 0.13F - v * 0.05F),
        normalize(towards + v * 0.13F - u * 0.05F), normalize(towards - v * 0.13F + u * 0.05F)};
    // Only the key light's shadow is looked at closely.
    const std::size_t rays = slot == Slot::key ? 4 : 2;
    for (const auto at : used_) {
        const Vec3 p = centre_of(at);
        float sum = 0.0F;
        for (std::size_t ray = 0; ray < rays; ++ray) {
            sum += passing(p, all_rays[ray], 22.0F, 0.48F);
        }
        reach_[at].*lit = sum / static_cast<float>(rays);
    }
}

Reach HairCloud::reach_at(Vec3 p) const {
    const Vec3 q = (p - low) / voxel - Vec3{0.5F, 0.5F, 0.5F};
    if (q.x < 0.0F || q.y < 0.0F || q.z < 0.0F) {
        return {};
    }
    const int i = static_cast<int>(q.x);
    const int j = static_cast<int>(q.y);
    const int k = static_cast<int>(q.z);
    if (i + 1 >= nx || j + 1 >= ny || k + 1 >= nz) {
        return {};
    }
    const float u = q.x - static_cast<float>(i);
    const float v = q.y - static_cast<float>(j);
    const float w = q.z - static_cast<float>(k);
    Reach sum{0.0F, 0.0F, 0.0F, 0.0F};
    for (int corner = 0; corner < 8; ++corner) {
        const int a = corner & 1;
        const int b = (corner >> 1) & 1;
        const int c = corner >> 2;
        const Reach& r = reach_[index(i + a, j + b, k + c)];
        const float weight =
            (a != 0 ? u : 1.0F - u) * (b != 0 ? v : 1.0F - v) * (c != 0 ? w : 1.0F - w);
        sum.open += weight * r.open;
        sum.key += weight * r.key;
        sum.fill += weight * r.fill;
        sum.rim += weight * r.rim;
    }
    return sum;
}

}  // namespace quarterturn::demo
