#pragma once

// Triangles with smooth normals, and the way to get them from a distance field
// (surface nets: one point in every cell the surface crosses).

#include "demo_photos/shape/vec3.h"

#include <array>
#include <cstdint>
#include <functional>
#include <vector>

namespace quarterturn::demo {

enum class Material : std::uint8_t {
    skin,
    eye,
    cape,
    gold,
    silver,
    pearl,
    petal,
    steel,
    wood,
    ribbon
};

struct Mesh {
    std::vector<Vec3> points;
    std::vector<Vec3> normals;
    std::vector<Vec3> tints;  ///< colour of its own, where the material asks for one
    std::vector<std::array<std::uint32_t, 3>> triangles;
    Material material = Material::skin;

    std::uint32_t add_point(Vec3 point, Vec3 normal, Vec3 tint = {1, 1, 1});
    void append(const Mesh& other);
};

using Field = std::function<float(Vec3)>;

/// The surface of `field` inside the box, `cell` centimetres a cell. Cells are
/// visited in blocks, and blocks that the surface cannot reach are passed over.
Mesh surface_of(const Field& field, Vec3 low, Vec3 high, float cell);

Vec3 gradient_of(const Field& field, Vec3 p, float step);

Mesh make_ball(Vec3 centre, float radius, int rings, Material material, Vec3 tint = {1, 1, 1});
Mesh make_rod(Vec3 a, Vec3 b, float radius_a, float radius_b, Material material,
              Vec3 tint = {1, 1, 1});

}  // namespace quarterturn::demo
