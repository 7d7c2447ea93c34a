#pragma once

// Lights of the room, and how much of each reaches a point: hair is a cloud of
// strands in a voxel grid that dims what passes (as in opacity shadow maps,
// Kim and Neumann 2001), the head is solid.

#include "demo_photos/hair/strands.h"
#include "demo_photos/shape/distance_grid.h"

#include <array>

namespace quarterturn::demo {

struct Light {
    Vec3 towards;  ///< unit vector from the head to the light
    Vec3 colour;
};

struct Room {
    Light key;
    Light fill;
    Light rim;
    Vec3 from_above{0.52F, 0.54F, 0.58F};
    Vec3 from_below{0.30F, 0.26F, 0.23F};
};

/// How much of the room and of each light reaches a point, 0 to 1.
struct Reach {
    float open = 1.0F;
    float key = 1.0F;
    float fill = 1.0F;
    float rim = 1.0F;
};

enum class Slot { key, fill, rim };

class HairCloud {
  public:
    static constexpr float voxel = 0.32F;

    explicit HairCloud(const DistanceGrid& solid);

    void add(const StrandSet& set);
    /// After the last `add`: measures how open each place is to the room.
    void measure_openness();
    void measure_light(Slot slot, Vec3 towards);

    Reach reach_at(Vec3 p) const;

  private:
    float passing(Vec3 from, Vec3 towards, float reach, float step) const;
    void measure_dimming();
    /// How far it is until nothing more is in the way.
    float leaving(Vec3 from, Vec3 towards) const;
    std::size_t index(int i, int j, int k) const {
        return (static_cast<std::size_t>(k) * ny + static_cast<std::size_t>(j)) * nx +
               static_cast<std::size_t>(i);
    }
    Vec3 centre_of(std::size_t at) const;

    static constexpr int nx = 116;
    static constexpr int ny = 150;
    static constexpr int nz = 116;
    const DistanceGrid& solid_;
    std::vector<float> density_;
    std::vector<float> block_;      ///< what the solid head dims in a centimetre
    std::vector<float> dims_;       ///< hair and head together
    Vec3 first_{1e9F, 1e9F, 1e9F};  ///< where something dims: between these
    Vec3 last_{-1e9F, -1e9F, -1e9F};
    std::vector<std::uint32_t> used_;
    std::vector<Reach> reach_;
};

}  // namespace quarterturn::demo
