#pragma once

// Repeatable chance: the same seed gives the same photos on every machine, so
// no <random> distribution (those differ between standard libraries) is used.

#include "demo_photos/shape/vec3.h"

#include <cstdint>

namespace quarterturn::demo {

/// SplitMix64 (Steele, Lea, Flood 2014).
class Chance {
  public:
    explicit Chance(std::uint64_t seed) : state_(seed) {}

    std::uint64_t next();
    /// Even in [0, 1).
    float unit();
    /// Even in [low, high).
    float between(float low, float high) { return low + (high - low) * unit(); }
    /// Roughly normal, mean 0, deviation 1 (sum of even numbers, cut at 3.5).
    float bell();
    Vec3 in_ball();

  private:
    std::uint64_t state_;
};

std::uint32_t hash_of(std::uint32_t v);

/// A number in [0, 1) for an index and a seed.
float hash_unit(std::uint32_t index, std::uint32_t seed = 0);

/// Smooth value noise in [-1, 1], one bump per centimetre at scale 1.
float noise(Vec3 p);

/// Three independent fields of `noise`.
Vec3 noise3(Vec3 p);

}  // namespace quarterturn::demo
