#include "demo_photos/hair/styles.h"
#include "demo_photos/shape/head_shape.h"

namespace quarterturn::demo {

namespace {

Vec3 onto_skin(const Field& skin, Vec3 p) {
    for (int i = 0; i < 8; ++i) {
        p.z -= skin(p) * 0.8F;
    }
    return p;
}

}  // namespace

StrandSet brows_and_lashes(const Field& skin, float face_width, Vec3 colour, std::uint64_t seed) {
    Chance chance(seed * 53U + 2U);
    StrandSet set;
    StrandLook look;
    look.shine = 0.25F;
    for (const float side : {-1.0F, 1.0F}) {
        for (int i = 0; i < 420; ++i) {
            // The brow rises to two thirds of its way, then falls and thins.
            const float t = chance.unit();
            const float arch =
                3.25F + 0.62F * std::sin(pi * 0.62F * t) - 0.42F * smoothstep(0.68F, 1.0F, t);
            const float thick = 0.34F * (1.0F - 0.72F * t) * smoothstep(-0.12F, 0.12F, t);
            const float x = mix(1.25F, 5.0F, t) * face_width;
            Vec3 p{side * x, arch + thick * chance.between(-1.0F, 1.0F), 9.0F};
            p = onto_skin(skin, p);
            const Vec3 n = normalize(gradient_of(skin, p, 0.2F));
            const float up = mix(0.95F, -0.12F, smoothstep(0.0F, 0.45F, t)) + 0.15F * chance.bell();
            const Vec3 lie = normalize(along_surface({side, up, -0.2F}, n));
            std::vector<Vec3> run;
            const float reach = mix(0.62F, 0.5F, t) * chance.between(0.7F, 1.15F);
            for (int k = 0; k <= 5; ++k) {
                const float s = static_cast<float>(k) / 5.0F;
                run.push_back(p + lie * (reach * s) + n * (0.02F + 0.05F * std::sin(pi * s)) +
                              Vec3{0.0F, -0.08F * s * s, 0.0F});
            }
            look.root_colour = look.tip_colour = colour * std::exp(0.25F * chance.bell());
            look.width = 0.012F;
            set.add(run, look);
        }
        for (int i = 0; i < 240; ++i) {
            const bool upper = i < 165;
            const float out = chance.between(-1.2F, 1.5F);
            const float y = upper ? HeadShape::upper_lid(out) : HeadShape::lower_lid(out);
            const float rim = HeadShape::eye_radius + 0.13F;
            const float z = std::sqrt(std::max(0.1F, rim * rim - out * out * 0.55F - y * y));
            const Vec3 p{side * (3.08F + out) * face_width, 1.25F + y, 7.02F + z};
            std::vector<Vec3> run;
            const float t = (out + 1.2F) / 2.7F;
            const float reach = (upper ? mix(0.42F, 0.72F, t) : 0.22F) * chance.between(0.8F, 1.1F);
            const float lift = upper ? 1.0F : -0.6F;
            for (int k = 0; k <= 6; ++k) {
                const float s = static_cast<float>(k) / 6.0F;
                const Vec3 way{side * (0.12F + 0.75F * (t - 0.3F)), lift * (0.05F + 0.75F * s),
                               0.85F - 0.25F * s};
                run.push_back(p + normalize(way) * (reach * s));
            }
            look.root_colour = look.tip_colour = Vec3{0.014F, 0.010F, 0.008F};
            look.width = upper ? 0.015F : 0.008F;
            set.add(run, look);
        }
    }
    return set;
}

}  // namespace quarterturn::demo
