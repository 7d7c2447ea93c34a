#include "demo_photos/hair/growing.h"
#include "demo_photos/hair/styles.h"

namespace quarterturn::demo {

namespace {

/// Frame of the bun: `axis` points away from the head.
struct Bun {
    Vec3 centre;
    Vec3 axis;
    Vec3 u;
    Vec3 v;
    float radius;

    explicit Bun(const HairPlan& plan)
        : centre(plan.bun_centre),
          axis(normalize({0.0F, plan.bun_centre.y > 2.0F ? 0.35F : -0.12F, -1.0F})),
          u(normalize(cross({0.0F, 1.0F, 0.0F}, axis))),
          v(cross(axis, u)),
          radius(plan.bun_radius) {}

    Vec3 place(float x, float y, float up) const { return centre + u * x + v * y + axis * up; }
};

void sweep_back(const HairGround& ground, const HairPlan& plan, const Bun& bun, StrandSet& set) {
    Chance chance(plan.seed * 19U + 7U);
    std::vector<std::vector<Vec3>> strands;
    for (const Root& root : ground.roots) {
        const float layer = chance.unit();
        const float side = root.side;
        // Front and side hair first drops from the parting, then runs over the
        // ear; hair of the crown runs straight down the back.
        const Vec3 over_ear{side * 7.6F, 2.6F + 0.25F * root.point.y, -4.0F};
        const float front = smoothstep(-5.0F, 2.5F, root.point.z);
        const Vec3 seat = bun.centre + bun.u * (-side * 1.2F * front) - bun.axis * 1.3F;
        Growth growth;
        growth.length = 34.0F;
        growth.step = 0.4F;
        growth.turn = 0.28F;
        growth.cling = 0.22F;
        growth.wanted = [&](const Tip& tip) {
            const Vec3 to_ear = over_ear - tip.point;
            const float pass = front * smoothstep(-3.5F, 1.0F, tip.point.z);
            Vec3 aim = lerp(normalize(seat - tip.point), normalize(to_ear), pass);
            const float drop = front * smoothstep(7.0F, 0.0F, tip.grown) * clamp01(tip.outward.y);
            aim += Vec3{side * 0.9F, 0.0F, 0.15F} * drop;
            return normalize(along_surface(aim, tip.outward) + tip.outward * (0.02F));
        };
        growth.rest_height = [&](const Tip& tip) {
            const float crown =
                smoothstep(3.0F, 9.0F, tip.point.y) * smoothstep(4.0F, -4.0F, tip.point.z);
            const float swoop = smoothstep(2.0F, 6.0F, tip.grown) * front;
            const float full = 0.35F + plan.volume * (0.75F * crown + 0.45F * swoop);
            return 0.10F + full * (0.35F + 0.65F * layer) +
                   0.14F * noise(root.point * Vec3{1.2F, 2.6F, 2.6F});
        };
        growth.done = [&](const Tip& tip) {
            return length(tip.point - bun.centre) < bun.radius * 0.8F;
        };
        const Vec3 first = root.normal * 0.5F + Vec3{side * 0.8F * front, 0.0F, -0.5F};
        strands.push_back(grow(ground, root, first, growth));
    }
    gather_into_locks(strands, ground.roots, 420, 0.62F, chance);
    for (std::size_t s = 0; s < strands.size(); ++s) {
        Wave wave;
        wave.width = 0.10F * plan.wave;
        wave.length = 5.0F + 3.0F * hash_unit(static_cast<std::uint32_t>(s / 40), 4);
        wave.starts = 2.0F;
        wave.phase = 3.0F * noise(ground.roots[s].point * 0.7F);
        bend_into_wave(strands[s], ground, wave);
        set.add(strands[s], strand_look(plan, ground.roots[s].point, chance));
    }
}

/// One twisted rope of the bun: `middle(t)` is its path for t in [0, 1].
template <typename Path>
void lay_rope(const HairPlan& plan, const Path& middle, float thick, float twists, int strands,
              std::uint64_t salt, StrandSet& set) {
    Chance chance(plan.seed * 23U + salt);
    constexpr int steps = 90;
    std::vector<Vec3> path;
    std::vector<Vec3> normal;
    for (int i = 0; i <= steps; ++i) {
        path.push_back(middle(static_cast<float>(i) / steps));
    }
    Vec3 n = any_perpendicular(normalize(path[1] - path[0]));
    for (int i = 0; i <= steps; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const Vec3 t =
            normalize(path[std::min(at + 1, path.size() - 1)] - path[at == 0 ? 0 : at - 1]);
        n = normalize(along_surface(n, t));
        normal.push_back(n);
    }
    for (int s = 0; s < strands; ++s) {
        // Two plies wound round each other; hair crowds at a ply's surface.
        const float ply = (s % 2 == 0) ? 0.0F : pi;
        const float around = chance.between(0.0F, 2.0F * pi);
        const float deep = std::pow(chance.unit(), 0.35F);
        const float loose = std::exp(0.06F * chance.bell());
        std::vector<Vec3> run;
        for (int i = 0; i <= steps; ++i) {
            const auto at = static_cast<std::size_t>(i);
            const float t = static_cast<float>(i) / steps;
            const Vec3 along =
                normalize(path[std::min(at + 1, path.size() - 1)] - path[at == 0 ? 0 : at - 1]);
            const Vec3 b = cross(along, normal[at]);
            const float turn = twists * 2.0F * pi * t + ply;
            const float size =
                thick * (0.55F + 0.45F * smoothstep(0.0F, 0.12F, t)) * (1.0F - 0.35F * t);
            const Vec3 centre =
                path[at] + (normal[at] * std::cos(turn) + b * std::sin(turn)) * (size * 0.52F);
            const float own = around + turn * 0.6F;
            run.push_back(centre + (normal[at] * std::cos(own) + b * std::sin(own)) *
                                       (size * 0.60F * deep * loose));
        }
        StrandLook look = strand_look(plan, path[0] + chance.in_ball() * 0.8F, chance);
        look.root_colour = lerp(look.root_colour, look.tip_colour, 0.55F);
        set.add(run, look);
    }
}

void wind_bun(const HairPlan& plan, const Bun& bun, StrandSet& set) {
    const float r = bun.radius;
    const auto per_rope = static_cast<int>(plan.strands / 9);
    // A coil that climbs from the rim to the middle.
    lay_rope(
        plan,
        [&](float t) {
            const float turn = 2.0F * pi * (0.30F + 2.15F * t);
            const float wide = r * mix(0.92F, 0.16F, std::pow(t, 0.9F));
            const float up = mix(-0.2F, 1.75F, std::sqrt(t)) * (r / 3.5F);
            return bun.place(wide * std::cos(turn), wide * std::sin(turn) * 0.92F, up);
        },
        r * 0.37F, 7.5F, per_rope * 2, 101, set);
    // A softer strand laid round it from the other side.
    lay_rope(
        plan,
        [&](float t) {
            const float turn = 2.0F * pi * (0.85F - 1.02F * t);
            const float wide = r * (1.0F + 0.06F * std::sin(turn * 3.0F));
            return bun.place(wide * std::cos(turn), wide * std::sin(turn) * 0.95F,
                             mix(-0.8F, -0.1F, t));
        },
        r * 0.33F, 4.0F, per_rope, 202, set);
    // Filling, so that no hole shows.
    Chance chance(plan.seed * 29U + 1U);
    for (int s = 0; s < per_rope; ++s) {
        std::vector<Vec3> run;
        const float tilt = chance.between(-0.5F, 0.5F);
        const float start = chance.between(0.0F, 2.0F * pi);
        const float far = r * chance.between(0.55F, 0.86F);
        for (int i = 0; i <= 20; ++i) {
            const float a = start + 0.16F * static_cast<float>(i);
            run.push_back(bun.place(far * std::cos(a), far * std::sin(a),
                                    0.9F * std::cos(a * 2.0F) * tilt + 0.7F - 0.3F * far / r));
        }
        set.add(run, strand_look(plan, run[0], chance));
    }
}

/// Soft pieces left out in front of the ears and at the nape.
void leave_tendrils(const HairGround& ground, const HairPlan& plan, StrandSet& set) {
    Chance chance(plan.seed * 37U + 11U);
    struct Piece {
        Vec3 root;
        float length;
        float curl;
    };
    const Piece pieces[] = {
        {{6.7F, 3.4F, 1.9F}, 16.0F, 0.55F},  {{-6.7F, 3.4F, 1.9F}, 17.5F, 0.6F},
        {{6.9F, 1.6F, 1.3F}, 10.0F, 0.4F},   {{-6.9F, 1.6F, 1.3F}, 9.0F, 0.4F},
        {{2.6F, -5.2F, -6.4F}, 6.0F, 0.35F}, {{-2.9F, -5.1F, -6.3F}, 5.0F, 0.35F}};
    for (const Piece& piece : pieces) {
        const float side = piece.root.x > 0.0F ? 1.0F : -1.0F;
        const float phase = chance.between(0.0F, 6.0F);
        const auto count = static_cast<int>(static_cast<float>(plan.strands) * 0.0011F);
        for (int s = 0; s < count; ++s) {
            Root root;
            root.point = piece.root + chance.in_ball() * 0.30F;
            root.point -= ground.solid.outward(root.point) * ground.solid.at(root.point);
            root.normal = ground.solid.outward(root.point);
            Growth growth;
            growth.length = piece.length * (0.86F + 0.14F * chance.unit());
            growth.step = 0.3F;
            growth.turn = 0.3F;
            const Vec3 spread = chance.in_ball() * 0.05F;
            growth.wanted = [&](const Tip& tip) {
                const float away = smoothstep(0.0F, 3.0F, tip.grown);
                return normalize(Vec3{side * 0.10F, -1.0F, -0.05F - 0.25F * (1.0F - away)} +
                                 spread);
            };
            growth.rest_height = [&](const Tip&) { return 0.45F; };
            auto run = grow(ground, root, root.normal * 0.7F + Vec3{0.0F, -0.6F, -0.1F}, growth);
            bend_into_wave(
                run, ground,
                {piece.curl * plan.wave, 4.4F, 2.0F, phase + 0.12F * chance.bell(), 0.85F});
            StrandLook look = strand_look(plan, root.point, chance);
            look.width *= 0.9F;
            set.add(run, look);
        }
    }
}

}  // namespace

StrandSet low_bun(const HairGround& ground, const HairPlan& plan) {
    const Bun bun(plan);
    StrandSet set;
    sweep_back(ground, plan, bun, set);
    wind_bun(plan, bun, set);
    leave_tendrils(ground, plan, set);
    add_strays(set, 0.012F, 0.55F, plan);
    return set;
}

}  // namespace quarterturn::demo
