#include "demo_photos/picture/accessory.h"

namespace quarterturn::demo {

namespace {

/// A leaf or petal: pointed at both ends, hollow along the middle.
Mesh make_leaf(Vec3 base, Vec3 along, Vec3 up, float reach, float wide, Material material,
               Vec3 tint = {1, 1, 1}) {
    Mesh mesh;
    mesh.material = material;
    along = normalize(along);
    up = normalize(along_surface(up, along));
    const Vec3 across = cross(along, up);
    constexpr int rows = 10;
    constexpr int columns = 6;
    const auto place = [&](float t, float s) {
        const float half = wide * 0.5F *
                           std::pow(std::sin(pi * std::min(1.0F, t * 0.94F + 0.05F)), 0.8F) *
                           (1.0F - 0.25F * t);
        const float curl = 0.20F * reach * std::sin(pi * t * 0.9F) - 0.10F * reach * t * t;
        const float hollow = 0.35F * half * s * s + 0.03F * reach * std::abs(s);
        return base + along * (reach * t) + across * (half * s) + up * (curl + hollow);
    };
    for (int i = 0; i <= rows; ++i) {
        for (int j = 0; j <= columns; ++j) {
            const float t = static_cast<float>(i) / rows;
            const float s = 2.0F * static_cast<float>(j) / columns - 1.0F;
            const Vec3 dt = place(t + 0.01F, s) - place(t - 0.01F, s);
            const Vec3 ds = place(t, s + 0.02F) - place(t, s - 0.02F);
            mesh.add_point(place(t, s), normalize(cross(ds, dt) * -1.0F + up * 1e-4F), tint);
        }
    }
    for (int i = 0; i < rows; ++i) {
        for (int j = 0; j < columns; ++j) {
            const auto p = static_cast<std::uint32_t>(i * (columns + 1) + j);
            const auto q = p + columns + 1;
            mesh.triangles.push_back({p, p + 1, q});
            mesh.triangles.push_back({p + 1, q + 1, q});
        }
    }
    for (Vec3& n : mesh.normals) {
        if (dot(n, up) < 0.0F) {
            n = -n;
        }
    }
    return mesh;
}

/// Where a ray from inside the head leaves the hair, and `lift` beyond.
Vec3 seat_on(const StrandSet& hair, Vec3 from, Vec3 ray, float lift) {
    std::vector<float> heights;
    for (const Vec3& p : hair.points) {
        const float along = dot(p - from, ray);
        if (along > 4.0F && length(p - from - ray * along) < 0.8F) {
            heights.push_back(along);
        }
    }
    if (heights.empty()) {
        return from + ray * 9.0F;
    }
    // Strays stand above the hair; nothing rests on them.
    const auto most = heights.begin() + static_cast<std::ptrdiff_t>(heights.size() * 95 / 100);
    std::nth_element(heights.begin(), most, heights.end());
    return from + ray * (*most + lift);
}

void add_flower(std::vector<Mesh>& parts, Vec3 at, Vec3 out, float size, Chance& chance) {
    const Vec3 u = any_perpendicular(out);
    const Vec3 v = cross(out, u);
    const float turn = chance.between(0.0F, 2.0F * pi);
    Mesh petals;
    petals.material = Material::petal;
    for (int i = 0; i < 6; ++i) {
        const float a = turn + 2.0F * pi * static_cast<float>(i) / 6.0F;
        const Vec3 way = u * std::cos(a) + v * std::sin(a) + out * 0.35F;
        petals.append(make_leaf(at, way, out, size, size * 0.8F, Material::petal,
                                Vec3{0.86F, 0.80F, 0.78F} * chance.between(0.92F, 1.04F)));
    }
    parts.push_back(petals);
    parts.push_back(make_ball(at + out * (size * 0.25F), size * 0.2F, 8, Material::gold));
}

}  // namespace

std::vector<Mesh> make_leaf_comb(Vec3 at, Vec3 along, Vec3 outward, float size, bool worn) {
    const float into = worn ? 1.3F : 0.5F;
    Chance chance(4711);
    const Vec3 across = cross(along, outward);
    Mesh gold;
    gold.material = Material::gold;
    Mesh pearls;
    pearls.material = Material::pearl;
    // A stem in a shallow bow, leaves to both sides, pearls between them.
    const auto stem = [&](float t) {
        return at + along * (size * 4.6F * t) + across * (size * 0.8F * (t * t - 0.3F)) +
               outward * (size * (0.35F - 0.45F * t * t));
    };
    for (int i = -8; i < 8; ++i) {
        gold.append(make_rod(stem(static_cast<float>(i) / 8.0F),
                             stem(static_cast<float>(i + 1) / 8.0F), 0.075F * size, 0.075F * size,
                             Material::gold));
    }
    for (int i = -7; i <= 7; ++i) {
        const float t = static_cast<float>(i) / 7.0F;
        const float side = (i % 2 == 0) ? 1.0F : -1.0F;
        const Vec3 base = stem(t * 0.95F);
        const Vec3 way = along * (0.75F * (t >= 0.0F ? 1.0F : -1.0F)) + across * (side * 0.9F) +
                         outward * chance.between(0.15F, 0.55F);
        const float reach = size * chance.between(1.5F, 2.1F) * (1.0F - 0.25F * std::abs(t));
        gold.append(make_leaf(base, way, outward, reach, reach * 0.42F, Material::gold));
        pearls.append(make_ball(base + across * (-side * 0.42F * size) + outward * (0.25F * size),
                                size * chance.between(0.19F, 0.33F) * (1.0F - 0.2F * std::abs(t)),
                                10, Material::pearl));
    }
    for (const float end : {-1.0F, 1.0F}) {
        gold.append(make_leaf(stem(end * 0.95F), along * end + outward * 0.1F, outward, size * 1.7F,
                              size * 0.7F, Material::gold));
    }
    // Teeth of the comb, under the leaves.
    for (int i = -5; i <= 5; ++i) {
        const Vec3 root = stem(static_cast<float>(i) * 0.09F);
        gold.append(make_rod(root, root + across * (-2.6F * size) - outward * (into * size),
                             0.05F * size, 0.035F * size, Material::gold));
    }
    return {gold, pearls};
}

std::vector<Mesh> make_accessory(const HairPlan& plan, const DistanceGrid& solid,
                                 const StrandSet& hair) {
    Chance chance(plan.seed * 61U + 4U);
    const Vec3 middle{0.0F, 3.0F, -1.0F};
    std::vector<Mesh> parts;
    switch (plan.accessory) {
        case Accessory::none:
            break;
        case Accessory::leaf_comb: {
            // On her left, above and behind the ear.
            const Vec3 ray = normalize({0.90F, 0.38F, -0.42F});
            const Vec3 at = seat_on(hair, middle, ray, 0.12F);
            const Vec3 out = normalize(solid.outward(at) + Vec3{0.15F, 0.0F, 0.0F});
            const Vec3 along = normalize(along_surface({0.15F, 0.75F, 0.75F}, out));
            parts = make_leaf_comb(at, along, out, 0.85F, true);
            break;
        }
        case Accessory::pearl_pins: {
            Mesh pearls;
            pearls.material = Material::pearl;
            const Vec3 axis = normalize({0.0F, plan.bun_centre.y > 2.0F ? 0.35F : -0.12F, -1.0F});
            const Vec3 u = normalize(cross({0.0F, 1.0F, 0.0F}, axis));
            const Vec3 v = cross(axis, u);
            for (int i = 0; i < 11; ++i) {
                const float a = 2.0F * pi * (static_cast<float>(i) + 0.3F * chance.unit()) / 11.0F;
                const Vec3 p = plan.bun_centre + u * (plan.bun_radius * 1.02F * std::cos(a)) +
                               v * (plan.bun_radius * 1.0F * std::sin(a)) + axis * 0.9F;
                pearls.append(make_ball(p, chance.between(0.24F, 0.36F), 10, Material::pearl));
            }
            parts.push_back(pearls);
            break;
        }
        case Accessory::small_flowers: {
            // A loose trail on her right.
            for (int i = 0; i < 9; ++i) {
                const float t = static_cast<float>(i) / 8.0F;
                const float turn = degrees(mix(62.0F, 168.0F, t));
                const float up = degrees(mix(34.0F, 12.0F, t) + 7.0F * chance.bell());
                const Vec3 ray{-std::sin(turn) * std::cos(up), std::sin(up),
                               std::cos(turn) * std::cos(up)};
                const Vec3 at = seat_on(hair, middle, ray, 0.05F);
                add_flower(parts, at, solid.outward(at), chance.between(0.75F, 1.25F), chance);
            }
            break;
        }
    }
    return parts;
}

Mesh make_clips(const std::vector<CurlSeat>& seats) {
    Mesh steel;
    steel.material = Material::steel;
    for (const CurlSeat& seat : seats) {
        // Flat prongs across the curl, a hinge and two grips at one end.
        const Vec3 lift = seat.outward * 2.85F;
        const Vec3 down = cross(seat.outward, seat.along);
        const Vec3 a = seat.middle + lift - seat.along * 1.7F + down * 0.5F;
        const Vec3 b = seat.middle + lift * 0.98F + seat.along * 2.1F + down * 0.5F;
        steel.append(make_rod(a, b, 0.11F, 0.15F, Material::steel));
        steel.append(make_rod(b, b + seat.along * 1.25F + seat.outward * 0.45F, 0.17F, 0.2F,
                              Material::steel));
        steel.append(make_rod(b, b + seat.along * 1.25F - seat.outward * 0.3F, 0.17F, 0.2F,
                              Material::steel));
        steel.append(make_ball(b, 0.26F, 8, Material::steel));
    }
    return steel;
}

std::vector<Mesh> make_stand() {
    Mesh post;
    post.material = Material::steel;
    post.append(
        make_rod({0.0F, -25.0F, -2.5F}, {0.0F, -60.0F, -2.5F}, 1.3F, 1.3F, Material::steel));
    post.append(
        make_rod({0.0F, -33.0F, -2.5F}, {6.5F, -33.0F, -2.5F}, 0.8F, 0.8F, Material::steel));
    Mesh knob;
    knob.material = Material::wood;
    knob.append(make_rod({0.0F, -26.0F, -2.5F}, {0.0F, -28.5F, -2.5F}, 2.6F, 2.2F, Material::wood,
                         {0.10F, 0.06F, 0.04F}));
    knob.append(make_ball({7.2F, -33.0F, -2.5F}, 1.3F, 10, Material::wood, {0.10F, 0.06F, 0.04F}));
    return {post, knob};
}

}  // namespace quarterturn::demo
