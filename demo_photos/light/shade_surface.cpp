#include "demo_photos/light/shading.h"

#include "demo_photos/hair/hair_plan.h"
#include "demo_photos/shape/head_shape.h"

namespace quarterturn::demo {

namespace {

struct Finish {
    Vec3 colour;
    float gloss = 0.0F;       ///< strength of the highlight
    float sharpness = 20.0F;  ///< exponent of the highlight
    float wrap = 0.0F;        ///< light that creeps round the edge
    float metal = 0.0F;       ///< highlight takes the colour
    float sheen = 0.0F;       ///< brightening at grazing view
};

Finish skin_finish(const SurfacePoint& at, const SkinTone& tone, float lips_distance) {
    const Vec3 p{at.point.x / tone.face_width, at.point.y, at.point.z};
    Finish f{tone.skin, 0.17F, 18.0F, 0.35F, 0.0F, 0.10F};
    f.colour = f.colour * (1.0F + 0.03F * noise(p * 2.3F) + 0.025F * noise(p * 9.0F));
    const float ax = std::abs(p.x);
    const auto spot = [&](Vec3 c, float r) {
        return smoothstep(r, 0.0F, length(Vec3{ax, p.y, p.z} - c));
    };
    f.colour =
        lerp(f.colour, tone.cheek,
             0.38F * spot({4.3F, -1.2F, 7.0F}, 3.4F) + 0.22F * spot({0.0F, -1.8F, 10.8F}, 1.5F) +
                 0.2F * spot({7.6F, 0.0F, -1.0F}, 3.2F));
    // A little shadow on the lids and a dark line along the lashes.
    const float out = ax - 3.08F;
    if (p.z > 6.5F && std::abs(out) < 2.1F && std::abs(p.y - 1.25F) < 1.9F) {
        const float lid =
            smoothstep(0.95F, 0.1F, std::abs(p.y - 1.25F - HeadShape::upper_lid(out) - 0.3F)) *
            smoothstep(2.0F, 1.2F, std::abs(out));
        f.colour = lerp(f.colour, tone.skin * Vec3{0.52F, 0.40F, 0.38F}, 0.55F * lid);
        const float edge = std::abs(p.y - 1.25F - HeadShape::upper_lid(out));
        const float low = std::abs(p.y - 1.25F - HeadShape::lower_lid(out));
        const float line =
            std::max(smoothstep(0.13F, 0.04F, edge), 0.55F * smoothstep(0.10F, 0.03F, low)) *
            smoothstep(1.75F, 1.5F, std::abs(out - 0.05F));
        f.colour = lerp(f.colour, {0.02F, 0.015F, 0.012F}, 0.85F * line);
    }
    const float lips = smoothstep(0.13F, 0.03F, lips_distance) * smoothstep(6.0F, 7.0F, p.z);
    f.colour = lerp(f.colour, tone.lips, 0.9F * lips);
    f.gloss = mix(f.gloss, 0.42F, lips);
    f.sharpness = mix(f.sharpness, 34.0F, lips);
    if (p.z > 7.0F && std::abs(p.y + 4.83F) < 0.25F && ax < 2.5F) {
        f.colour = f.colour *
                   mix(1.0F, 0.30F,
                       smoothstep(0.10F, 0.0F, std::abs(p.y + 4.83F)) * smoothstep(2.2F, 1.6F, ax));
    }
    if (p.y > -7.0F) {
        const float grown = smoothstep(0.15F, 1.0F, hairline(at.point));
        f.colour = lerp(f.colour, tone.scalp, 0.92F * grown);
        f.gloss *= 1.0F - 0.8F * grown;
    }
    return f;
}

Finish eye_finish(const SurfacePoint& at, const SkinTone& tone) {
    // Measured on the ball: the normal tells how far from the gaze.
    const Vec3 gaze = normalize({at.point.x > 0.0F ? -0.02F : 0.02F, -0.03F, 1.0F});
    const float off =
        std::acos(std::clamp(dot(at.normal, gaze), -1.0F, 1.0F)) * HeadShape::eye_radius;
    Finish f{{0.62F, 0.60F, 0.58F}, 0.9F, 220.0F, 0.25F, 0.0F, 0.0F};
    f.colour = lerp(f.colour, {0.50F, 0.34F, 0.31F}, smoothstep(0.8F, 1.6F, off));
    const Vec3 side = at.normal - gaze * dot(at.normal, gaze);
    const float spokes =
        noise(Vec3{std::atan2(side.y, side.x) * 5.0F, off * 3.0F, at.point.x > 0.0F ? 4.0F : 9.0F});
    const Vec3 iris = tone.iris * (1.0F + 0.35F * spokes + 0.9F * smoothstep(0.5F, 0.25F, off));
    f.colour = lerp(f.colour, iris, smoothstep(0.62F, 0.57F, off));
    f.colour = f.colour * mix(1.0F, 0.25F, smoothstep(0.08F, 0.0F, std::abs(off - 0.58F)));
    f.colour = lerp(f.colour, {0.006F, 0.006F, 0.007F}, smoothstep(0.25F, 0.20F, off));
    // The upper lid shades the ball.
    f.colour = f.colour * mix(0.42F, 1.0F, smoothstep(0.62F, 0.1F, at.point.y - 1.25F));
    return f;
}

Finish finish_of(const SurfacePoint& at, const SkinTone& tone, float lips_distance) {
    switch (at.material) {
        case Material::skin:
            return skin_finish(at, tone, lips_distance);
        case Material::eye:
            return eye_finish(at, tone);
        case Material::cape: {
            const float weave = noise(at.point * Vec3{14.0F, 14.0F, 14.0F});
            return {tone.cape * (1.0F + 0.05F * weave), 0.06F, 8.0F, 0.2F, 0.0F, 0.25F};
        }
        case Material::gold:
            return {{0.83F, 0.56F, 0.25F}, 0.9F, 42.0F, 0.1F, 0.9F, 0.15F};
        case Material::silver:
            return {{0.72F, 0.72F, 0.74F}, 0.9F, 42.0F, 0.1F, 0.9F, 0.15F};
        case Material::pearl:
            return {{0.80F, 0.75F, 0.70F}, 0.75F, 90.0F, 0.35F, 0.0F, 0.35F};
        case Material::petal:
            return {at.tint, 0.08F, 10.0F, 0.5F, 0.0F, 0.2F};
        case Material::steel:
            return {{0.55F, 0.56F, 0.58F}, 0.8F, 60.0F, 0.0F, 0.9F, 0.1F};
        case Material::wood:
            return {at.tint, 0.15F, 24.0F, 0.1F, 0.0F, 0.1F};
        case Material::ribbon:
            return {at.tint, 0.3F, 14.0F, 0.2F, 0.3F, 0.4F};
    }
    return {};
}

}  // namespace

Vec3 shade_surface(const SurfacePoint& at, Vec3 to_eye, const Room& room, const Reach& reach,
                   const SkinTone& tone, float lips_distance) {
    const Finish f = finish_of(at, tone, lips_distance);
    const Vec3 n = at.normal;
    Vec3 diffuse{};
    Vec3 shine{};
    const float grazing = std::pow(1.0F - clamp01(dot(n, to_eye)), 4.0F);
    const auto add = [&](const Light& light, float reached) {
        const float facing = dot(n, light.towards);
        Vec3 lit{};
        // Skin lets red light creep further round than blue.
        lit.x = clamp01((facing + f.wrap) / (1.0F + f.wrap));
        lit.y = clamp01((facing + f.wrap * 0.45F) / (1.0F + f.wrap * 0.45F));
        lit.z = clamp01((facing + f.wrap * 0.30F) / (1.0F + f.wrap * 0.30F));
        diffuse += light.colour * lit * reached;
        const Vec3 half = normalize(light.towards + to_eye);
        const float spark = std::pow(clamp01(dot(n, half)), f.sharpness) * (0.6F + 2.4F * grazing) *
                            smoothstep(-0.05F, 0.25F, facing);
        shine += light.colour * (spark * f.gloss * reached);
    };
    add(room.key, reach.key);
    add(room.fill, reach.fill);
    add(room.rim, reach.rim);
    const Vec3 around = lerp(room.from_below, room.from_above, 0.5F + 0.5F * n.y);
    const float open = reach.open;
    Vec3 ambient = around * Vec3{std::pow(open, 0.85F), open, std::pow(open, 1.08F)};
    const Vec3 mirror = n * (2.0F * dot(n, to_eye)) - to_eye;
    const Vec3 seen =
        lerp(room.from_below, room.from_above * 1.6F, smoothstep(-0.4F, 0.6F, mirror.y));
    Vec3 colour =
        f.colour * (diffuse * (1.0F - 0.75F * f.metal) + ambient * (1.0F - 0.6F * f.metal));
    const Vec3 tinted = lerp({1.0F, 1.0F, 1.0F}, f.colour, f.metal);
    colour +=
        tinted * (shine + seen * (open * (f.gloss * 0.10F + f.metal * 0.55F + f.sheen * grazing)));
    return colour;
}

}  // namespace quarterturn::demo
