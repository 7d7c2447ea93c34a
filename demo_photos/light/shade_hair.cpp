#include "demo_photos/light/shading.h"

namespace quarterturn::demo {

namespace {

float lobe(float x, float width) {
    const float t = x / width;
    return std::exp(-0.5F * t * t);
}

Vec3 power(Vec3 c, float e) {
    return {std::pow(c.x, e), std::pow(c.y, e), std::pow(c.z, e)};
}

}  // namespace

Vec3 shade_hair(Vec3 colour, float shine, Vec3 along, Vec3 outward, Vec3 to_eye, const Room& room,
                const Reach& reach) {
    const float sin_eye = std::clamp(dot(along, to_eye), -1.0F, 1.0F);
    const float lean_eye = std::asin(sin_eye);
    const Vec3 eye_flat = along_surface(to_eye, along);
    // Light that went through a hair is deeper in colour than light off it.
    const Vec3 deep = power(colour, 0.62F);
    Vec3 sum{};
    const auto add = [&](const Light& light, float reached) {
        if (reached < 0.004F) {
            return;
        }
        const float sin_light = std::clamp(dot(along, light.towards), -1.0F, 1.0F);
        const float lean = 0.5F * (std::asin(sin_light) + lean_eye);
        const Vec3 light_flat = along_surface(light.towards, along);
        const float scale = std::sqrt(dot(light_flat, light_flat) * dot(eye_flat, eye_flat));
        const float cos_round = scale > 1e-5F ? dot(light_flat, eye_flat) / scale : 0.0F;
        const float half_round = std::sqrt(std::max(0.0F, 0.5F + 0.5F * cos_round));
        const float cos_light = std::sqrt(1.0F - sin_light * sin_light);
        // Off the surface, within and back, and straight through.
        const float off = lobe(lean + degrees(6.0F), degrees(6.5F)) * half_round * 0.10F * shine;
        const float within =
            lobe(lean - degrees(8.0F), degrees(11.0F)) * std::pow(half_round, 3.0F) * 0.75F * shine;
        const float through = lobe(lean - degrees(3.0F), degrees(13.0F)) *
                              std::pow(0.5F - 0.5F * cos_round, 4.0F) * 0.55F;
        const float facing = dot(outward, light.towards);
        const float diffuse = cos_light * (0.42F + 0.58F * clamp01(0.35F + 0.65F * facing));
        const Vec3 scatter = colour * (0.72F * diffuse);
        const Vec3 glow = Vec3{off, off, off} + deep * (within + through);
        sum += light.colour * (scatter + glow * clamp01(0.4F + facing * 1.2F + through * 2.0F)) *
               reached;
    };
    add(room.key, reach.key);
    add(room.fill, reach.fill);
    add(room.rim, reach.rim);
    const Vec3 around = lerp(room.from_below, room.from_above, 0.5F + 0.5F * outward.y);
    // Even the deepest hair gets some light from its neighbours.
    const float open = 0.07F + 0.93F * reach.open * (0.25F + 0.75F * reach.open);
    sum += around *
           (colour * 0.85F + deep * (0.05F * shine * std::sqrt(1.0F - sin_eye * sin_eye))) * open;
    return sum;
}

}  // namespace quarterturn::demo
