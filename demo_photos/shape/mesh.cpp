#include "demo_photos/shape/mesh.h"

#include <unordered_map>

namespace quarterturn::demo {

std::uint32_t Mesh::add_point(Vec3 point, Vec3 normal, Vec3 tint) {
    points.push_back(point);
    normals.push_back(normal);
    tints.push_back(tint);
    return static_cast<std::uint32_t>(points.size() - 1);
}

void Mesh::append(const Mesh& other) {
    const auto base = static_cast<std::uint32_t>(points.size());
    points.insert(points.end(), other.points.begin(), other.points.end());
    normals.insert(normals.end(), other.normals.begin(), other.normals.end());
    tints.insert(tints.end(), other.tints.begin(), other.tints.end());
    for (const auto& t : other.triangles) {
        triangles.push_back({t[0] + base, t[1] + base, t[2] + base});
    }
}

Vec3 gradient_of(const Field& field, Vec3 p, float e) {
    // Four samples at the corners of a tetrahedron.
    const float a = field(p + Vec3{e, -e, -e});
    const float b = field(p + Vec3{-e, -e, e});
    const float c = field(p + Vec3{-e, e, -e});
    const float d = field(p + Vec3{e, e, e});
    return Vec3{a - b - c + d, -a - b + c + d, -a + b - c + d} / (4.0F * e);
}

namespace {

constexpr int block = 8;
constexpr int side = block + 1;

std::uint64_t cell_key(int x, int y, int z) {
    return (static_cast<std::uint64_t>(x) << 42U) | (static_cast<std::uint64_t>(y) << 21U) |
           static_cast<std::uint64_t>(z);
}

struct Net {
    const Field& field;
    Vec3 low;
    float cell;
    Mesh mesh;
    std::unordered_map<std::uint64_t, std::uint32_t> point_of_cell;
    struct Quad {
        std::array<std::uint64_t, 4> cells;
        bool flip;
    };
    std::vector<Quad> quads;
    std::array<float, side * side * side> values{};

    static int at(int i, int j, int k) { return (k * side + j) * side + i; }

    void visit_block(int bx, int by, int bz) {
        const Vec3 middle =
            low + Vec3{(static_cast<float>(bx) + 0.5F), (static_cast<float>(by) + 0.5F),
                       (static_cast<float>(bz) + 0.5F)} *
                      (cell * block);
        if (std::abs(field(middle)) > cell * block * 1.7F) {
            return;
        }
        for (int k = 0; k < side; ++k) {
            for (int j = 0; j < side; ++j) {
                for (int i = 0; i < side; ++i) {
                    values[at(i, j, k)] =
                        field(position(bx * block + i, by * block + j, bz * block + k));
                }
            }
        }
        for (int k = 0; k < block; ++k) {
            for (int j = 0; j < block; ++j) {
                for (int i = 0; i < block; ++i) {
                    place_point(i, j, k, bx * block, by * block, bz * block);
                    collect_quads(i, j, k, bx * block, by * block, bz * block);
                }
            }
        }
    }

    Vec3 position(int x, int y, int z) const {
        return low +
               Vec3{static_cast<float>(x), static_cast<float>(y), static_cast<float>(z)} * cell;
    }

    void place_point(int i, int j, int k, int ox, int oy, int oz) {
        Vec3 sum{};
        int crossings = 0;
        const auto edge = [&](int ai, int aj, int ak, int bi, int bj, int bk) {
            const float va = values[at(ai, aj, ak)];
            const float vb = values[at(bi, bj, bk)];
            if ((va < 0.0F) == (vb < 0.0F)) {
                return;
            }
            sum += lerp(position(ox + ai, oy + aj, oz + ak), position(ox + bi, oy + bj, oz + bk),
                        va / (va - vb));
            ++crossings;
        };
        for (int a = 0; a < 2; ++a) {
            for (int b = 0; b < 2; ++b) {
                edge(i, j + a, k + b, i + 1, j + a, k + b);
                edge(i + a, j, k + b, i + a, j + 1, k + b);
                edge(i + a, j + b, k, i + a, j + b, k + 1);
            }
        }
        if (crossings == 0) {
            return;
        }
        Vec3 p = sum / static_cast<float>(crossings);
        const Vec3 g = gradient_of(field, p, cell * 0.35F);
        const float slope = std::max(dot(g, g), 0.25F);
        p -= g * std::clamp(field(p) / slope, -0.6F * cell, 0.6F * cell);
        point_of_cell[cell_key(ox + i, oy + j, oz + k)] = mesh.add_point(p, normalize(g));
    }

    void collect_quads(int i, int j, int k, int ox, int oy, int oz) {
        const float here = values[at(i, j, k)];
        const int x = ox + i;
        const int y = oy + j;
        const int z = oz + k;
        if (x == 0 || y == 0 || z == 0) {
            return;
        }
        const auto add = [&](float there, std::array<std::uint64_t, 4> cells) {
            if ((here < 0.0F) != (there < 0.0F)) {
                quads.push_back({cells, here > 0.0F});
            }
        };
        add(values[at(i + 1, j, k)], {cell_key(x, y - 1, z - 1), cell_key(x, y, z - 1),
                                      cell_key(x, y, z), cell_key(x, y - 1, z)});
        add(values[at(i, j + 1, k)], {cell_key(x - 1, y, z - 1), cell_key(x - 1, y, z),
                                      cell_key(x, y, z), cell_key(x, y, z - 1)});
        add(values[at(i, j, k + 1)], {cell_key(x - 1, y - 1, z), cell_key(x, y - 1, z),
                                      cell_key(x, y, z), cell_key(x - 1, y, z)});
    }

    void stitch() {
        for (const Quad& quad : quads) {
            std::array<std::uint32_t, 4> corner{};
            bool whole = true;
            for (int c = 0; c < 4; ++c) {
                const auto found = point_of_cell.find(quad.cells[static_cast<std::size_t>(c)]);
                whole = whole && found != point_of_cell.end();
                if (whole) {
                    corner[static_cast<std::size_t>(c)] = found->second;
                }
            }
            if (!whole) {
                continue;
            }
            if (quad.flip) {
                std::swap(corner[1], corner[3]);
            }
            mesh.triangles.push_back({corner[0], corner[1], corner[2]});
            mesh.triangles.push_back({corner[0], corner[2], corner[3]});
        }
    }
};

}  // namespace

Mesh surface_of(const Field& field, Vec3 low, Vec3 high, float cell) {
    Net net{field, low, cell, {}, {}, {}};
    const Vec3 blocks = (high - low) / (cell * block);
    for (int z = 0; z <= static_cast<int>(blocks.z); ++z) {
        for (int y = 0; y <= static_cast<int>(blocks.y); ++y) {
            for (int x = 0; x <= static_cast<int>(blocks.x); ++x) {
                net.visit_block(x, y, z);
            }
        }
    }
    net.stitch();
    return std::move(net.mesh);
}

Mesh make_ball(Vec3 centre, float radius, int rings, Material material, Vec3 tint) {
    Mesh mesh;
    mesh.material = material;
    const int turns = rings * 2;
    for (int i = 0; i <= rings; ++i) {
        const float a = pi * static_cast<float>(i) / static_cast<float>(rings);
        for (int j = 0; j <= turns; ++j) {
            const float b = 2.0F * pi * static_cast<float>(j) / static_cast<float>(turns);
            const Vec3 n{std::sin(a) * std::cos(b), std::cos(a), std::sin(a) * std::sin(b)};
            mesh.add_point(centre + n * radius, n, tint);
        }
    }
    for (int i = 0; i < rings; ++i) {
        for (int j = 0; j < turns; ++j) {
            const auto p = static_cast<std::uint32_t>(i * (turns + 1) + j);
            const auto q = p + static_cast<std::uint32_t>(turns) + 1;
            mesh.triangles.push_back({p, p + 1, q});
            mesh.triangles.push_back({p + 1, q + 1, q});
        }
    }
    return mesh;
}

Mesh make_rod(Vec3 a, Vec3 b, float radius_a, float radius_b, Material material, Vec3 tint) {
    Mesh mesh;
    mesh.material = material;
    constexpr int turns = 12;
    const Vec3 axis = normalize(b - a);
    const Vec3 u = any_perpendicular(axis);
    const Vec3 v = cross(axis, u);
    // Rounded ends: rings along the rod with a cap at either end.
    const struct {
        float along;
        float wide;
        float lean;
    } rings[] = {{-1.0F, 0.02F, -1.0F}, {-0.7F, 0.7F, -0.7F}, {0.0F, 1.0F, 0.0F},
                 {0.0F, 1.0F, 0.0F},    {0.7F, 0.7F, 0.7F},   {1.0F, 0.02F, 1.0F}};
    for (int i = 0; i < 6; ++i) {
        const Vec3 base = i < 3 ? a : b;
        const float radius = i < 3 ? radius_a : radius_b;
        for (int j = 0; j <= turns; ++j) {
            const float t = 2.0F * pi * static_cast<float>(j) / turns;
            const Vec3 out = u * std::cos(t) + v * std::sin(t);
            mesh.add_point(base + axis * (rings[i].along * radius) + out * (rings[i].wide * radius),
                           normalize(out * (1.0F - std::abs(rings[i].lean)) + axis * rings[i].lean),
                           tint);
        }
    }
    for (int i = 0; i < 5; ++i) {
        for (int j = 0; j < turns; ++j) {
            const auto p = static_cast<std::uint32_t>(i * (turns + 1) + j);
            const auto q = p + turns + 1;
            mesh.triangles.push_back({p, p + 1, q});
            mesh.triangles.push_back({p + 1, q + 1, q});
        }
    }
    return mesh;
}

}  // namespace quarterturn::demo
