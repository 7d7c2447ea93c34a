#include "demo_photos/shape/head_shape.h"

#include "demo_photos/shape/distance.h"

namespace quarterturn::demo {

namespace {

/// |x| with the crease at the middle rounded off.
Vec3 folded(Vec3 p, float width, float round = 0.05F) {
    const float x = p.x / width;
    return {std::sqrt(x * x + round * round), p.y, p.z};
}

}  // namespace

float HeadShape::upper_lid(float out) {
    const float u = (out - 0.05F) / 1.55F;
    return 0.47F * (1.0F - u * u) * (1.0F + 0.10F * u) + 0.08F * u;
}

float HeadShape::lower_lid(float out) {
    const float u = (out - 0.05F) / 1.55F;
    return -0.40F * (1.0F - u * u) + 0.08F * u;
}

float HeadShape::skull(Vec3 p) const {
    const Vec3 q = folded(p, face_.width, 0.45F);
    float d = to_ellipsoid(q, {0.0F, 4.1F, -1.1F}, {7.35F, 8.2F, 8.7F});
    d = join(d, to_ellipsoid(q, {0.0F, 5.0F, 1.7F}, {6.2F, 6.0F, 6.9F}), 1.5F);
    d = join(d, to_ellipsoid(q, {0.0F, -1.0F, 2.4F}, {5.35F, 7.7F, 6.35F}), 2.0F);
    const float jaw = face_.jaw;
    d = join(d, to_rod(q, {4.0F * jaw, -4.0F, 1.3F}, {0.8F, -8.0F, 6.8F}, 1.45F, 1.25F), 2.8F);
    d = join(d, to_ellipsoid(q, {0.0F, -7.8F, 7.1F}, {1.3F * jaw, 1.4F, 1.55F}), 1.8F);
    // The neck, a little wider than deep.
    const Vec3 n{q.x * 0.98F, q.y, q.z};
    d = join(d, to_rod(n, {0.0F, -3.5F, -2.0F}, {0.0F, -18.0F, -3.2F}, 4.25F, 4.5F), 2.6F);
    return d;
}

float HeadShape::nose(Vec3 p) const {
    const float n = face_.nose;
    float d = to_rod(p, {0.0F, 2.2F, 8.25F}, {0.0F, -1.3F, 10.15F}, 0.40F * n, 0.52F * n);
    d = join(d, to_rod(p, {0.0F, 1.6F, 7.9F}, {0.5F, -1.6F, 9.2F}, 0.6F, 0.78F * n), 0.9F);
    d = join(d, to_ball(p, {0.0F, -1.55F, 10.4F}, 0.68F * n), 0.55F);
    d = join(d, to_ellipsoid(p, {0.93F * n, -1.95F, 9.4F}, {0.55F, 0.52F, 0.8F}), 0.4F);
    return d;
}

float HeadShape::lips(Vec3 p) const {
    const Vec3 q = folded(p, face_.width);
    const float l = face_.lips;
    float upper = to_rod(q, {0.5F, -4.22F, 9.02F}, {1.4F, -4.5F, 8.72F}, 0.37F * l, 0.33F * l);
    upper =
        join(upper, to_rod(q, {1.4F, -4.5F, 8.72F}, {2.3F, -4.66F, 8.05F}, 0.33F * l, 0.13F), 0.4F);
    upper = join(upper, to_ball(q, {0.0F, -4.42F, 9.1F}, 0.38F * l), 0.35F);
    float lower = to_rod(q, {0.0F, -5.3F, 8.92F}, {1.15F, -5.14F, 8.66F}, 0.50F * l, 0.43F * l);
    lower = join(lower, to_rod(q, {1.15F, -5.14F, 8.66F}, {2.25F, -4.72F, 8.0F}, 0.43F * l, 0.10F),
                 0.4F);
    return join(upper, lower, 0.06F);
}

float HeadShape::ear(Vec3 p) const {
    // Leaning back a little and standing off the head, as ears do.
    const Vec3 centre{6.95F, 0.3F, -1.0F};
    if (to_ball(p, centre, 3.4F) > 2.5F) {
        return to_ball(p, centre, 3.0F);
    }
    Vec3 q = p - centre;
    const float out = degrees(13.0F);
    q = {q.x * std::cos(out) + q.z * std::sin(out), q.y,
         -q.x * std::sin(out) + q.z * std::cos(out)};
    const float lean = degrees(12.0F);
    q = {q.x, q.y * std::cos(lean) - q.z * std::sin(lean),
         q.y * std::sin(lean) + q.z * std::cos(lean)};
    const float bound = to_ellipsoid(q, {0.25F, 0.2F, -0.2F}, {0.75F, 2.9F, 1.75F});
    if (bound > 0.7F) {
        return bound;
    }
    // q.z runs forward; rim of the ear as a chain of rods.
    constexpr Vec3 rim[] = {{0.1F, 0.7F, 1.1F},   {0.35F, 2.1F, 1.0F},  {0.5F, 2.75F, 0.1F},
                            {0.55F, 2.4F, -1.1F}, {0.5F, 1.1F, -1.6F},  {0.4F, -0.4F, -1.25F},
                            {0.3F, -1.7F, -0.3F}, {0.15F, -2.3F, 0.45F}};
    float d = to_ellipsoid(q, {0.0F, 0.2F, -0.2F}, {0.42F, 2.5F, 1.35F});
    d = join(d, to_ellipsoid(q, {0.15F, -2.0F, 0.35F}, {0.36F, 0.75F, 0.6F}), 0.4F);
    for (int i = 0; i + 1 < 7; ++i) {
        d = join(d, to_rod(q, rim[i], rim[i + 1], 0.27F, 0.26F), 0.16F);
    }
    d = join(d, to_rod(q, {0.4F, 1.5F, 0.1F}, {0.45F, -0.9F, -0.55F}, 0.3F, 0.3F), 0.3F);
    d = carve(d, to_ellipsoid(q, {0.75F, -0.25F, 0.45F}, {0.75F, 1.0F, 0.62F}), 0.25F);
    d = join(d, to_ellipsoid(q, {0.25F, -0.3F, 1.2F}, {0.35F, 0.5F, 0.3F}), 0.25F);
    return d;
}

float HeadShape::skin(Vec3 p) const {
    float d = skull(p);
    if (p.y < -5.0F) {
        const Vec3 q = folded(p, 1.0F, 1.2F);
        d = join(d, to_rod(q, {1.0F, -15.2F, -2.6F}, {10.5F, -20.2F, -3.2F}, 1.9F, 2.0F), 3.5F);
        d = join(d, to_ellipsoid(q, {0.0F, -24.8F, -2.4F}, {11.5F, 7.9F, 6.2F}), 2.5F);
    }
    if (p.y < -12.0F) {
        return d;
    }
    const Vec3 q = folded(p, face_.width);
    if (q.z > 0.0F) {
        d = join(d, to_ellipsoid(q, {4.0F, -0.9F, 5.3F}, {1.8F, 1.5F, 2.0F}), 2.2F);
        d = join(d, to_ellipsoid(q, {2.9F, -3.3F, 5.2F}, {2.3F, 2.9F, 2.5F}), 2.0F);
        d = join(d, to_ellipsoid(q, {0.0F, -4.4F, 6.85F}, {2.7F, 2.6F, 1.9F}), 1.6F);
        d = join(d, to_rod(q, {1.2F, 3.1F, 7.85F}, {4.6F, 3.35F, 6.3F}, 0.55F, 0.5F), 1.3F);
        d = carve(d, to_ellipsoid(q, {3.1F, 1.25F, 9.0F}, {1.75F, 1.15F, 1.55F}), 1.1F);
        d = join(d, nose(q), 0.45F);
        d = carve(d, to_ellipsoid(q, {0.5F * face_.nose, -2.45F, 9.85F}, {0.27F, 0.3F, 0.45F}),
                  0.18F);
        // Philtrum, lips, the line between them.
        d = carve(d, to_rod(q, {0.0F, -2.9F, 9.2F}, {0.0F, -3.75F, 9.25F}, 0.12F, 0.17F), 0.35F);
        d = join(d, lips(p), 0.34F);
        d = carve(d, to_rod(q, {0.0F, -4.84F, 9.5F}, {1.25F, -4.80F, 9.12F}, 0.09F, 0.09F), 0.16F);
        d = carve(d, to_rod(q, {1.25F, -4.80F, 9.12F}, {2.12F, -4.70F, 8.35F}, 0.08F, 0.03F),
                  0.14F);
        // Lids: a shell round the eyeball with an almond opening.
        const Vec3 eye{3.08F, 1.25F, 7.02F};
        const float out = q.x - eye.x;
        float lid = join(d, to_ball(q, eye, eye_radius + 0.13F), 0.4F);
        const float slit = std::max(q.y - eye.y - upper_lid(out), eye.y + lower_lid(out) - q.y);
        lid = carve(lid, std::max(slit, std::max(-(q.z - eye.z), std::abs(out) - 1.75F)), 0.07F);
        // The fold above the upper lid.
        const float fold_y = eye.y + upper_lid(out) + 0.34F;
        if (std::abs(out) < 1.5F) {
            const float z =
                eye.z + std::sqrt(std::max(
                            0.0F, 2.05F - out * out * 0.7F - (fold_y - eye.y) * (fold_y - eye.y)));
            lid = carve(lid, to_ball(q, {q.x, fold_y, z + 0.05F}, 0.06F), 0.18F);
        }
        d = lid;
    }
    if (q.x > 4.0F) {
        d = join(d, ear(q), 0.35F);
    }
    return d;
}

float HeadShape::cape(Vec3 p) const {
    if (p.y > -9.5F) {
        return p.y + 14.5F;
    }
    const Vec3 q = folded(p, 1.0F, 1.2F);
    float d = to_rod(q, {2.0F, -15.6F, -2.7F}, {12.0F, -20.3F, -3.2F}, 2.5F, 3.0F);
    d = join(d, to_ellipsoid(q, {0.0F, -24.5F, -2.2F}, {14.2F, 8.4F, 7.0F}), 2.5F);
    // A neckline that dips in front.
    const float dip = -15.2F - 0.16F * (q.z + 3.0F);
    d = carve(d, to_ellipsoid(q, {0.0F, dip + 3.0F, -1.6F}, {5.6F, 4.4F, 6.3F}), 1.0F);
    const float folds = 0.10F * std::sin(q.x * 1.3F + 0.6F * q.z + 0.4F * std::sin(q.y)) *
                        smoothstep(-16.0F, -22.0F, p.y);
    d = std::max(d + folds, -(p.y + 25.5F));
    return d;
}

}  // namespace quarterturn::demo
