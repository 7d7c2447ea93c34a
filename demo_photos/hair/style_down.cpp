#include "demo_photos/hair/growing.h"
#include "demo_photos/hair/styles.h"

namespace quarterturn::demo {

namespace {

/// Combed away from the parting on top, falling at the sides and the back.
Vec3 combed_down(const Tip& tip, const Root& root, bool pinned_back) {
    const float top = clamp01(tip.outward.y) * smoothstep(-2.0F, 3.0F, tip.point.y);
    Vec3 comb{root.side * (0.04F + 0.96F * top), -1.0F + 0.75F * top, -0.22F - 0.40F * top};
    const float face = smoothstep(1.0F, 5.0F, tip.point.z) * smoothstep(-9.0F, -5.0F, tip.point.y);
    comb += Vec3{root.side * 0.7F, 0.0F, -0.75F} * face;
    if (pinned_back && root.side > 0.0F && root.point.z > -3.0F && tip.point.y > 1.0F &&
        tip.point.z > -5.0F) {
        comb += Vec3{0.1F, 0.15F, -1.5F};
    }
    // Hair hangs against the head and neck rather than standing off.
    comb -= tip.outward * (0.30F * smoothstep(1.6F, 4.0F, tip.height));
    // At the shoulders it parts: front hair forwards, the rest down the back.
    const float inward =
        smoothstep(3.5F, 8.0F, std::abs(tip.point.x)) * smoothstep(-3.0F, -9.0F, tip.point.y);
    const bool forwards = root.point.z > 1.2F && !(pinned_back && root.side > 0.0F);
    const float way = forwards ? 1.0F : -1.0F;
    const float shoulder =
        smoothstep(-6.0F, -12.0F, tip.point.y) * smoothstep(-26.0F, -18.0F, tip.point.y);
    const Vec3 fall = normalize(
        Vec3{(tip.point.x > 0.0F ? -0.42F : 0.42F) * inward, -1.0F, 0.5F * way * shoulder});
    const float free = smoothstep(-1.0F, -9.0F, tip.point.y);
    comb = lerp(normalize(comb), fall, free);
    const float near = smoothstep(2.6F, 0.6F, tip.height);
    return normalize(lerp(comb, along_surface(comb, tip.outward), near * 0.92F));
}

}  // namespace

StrandSet let_down(const HairGround& ground, const HairPlan& plan) {
    const bool waved = plan.style != Style::brushed_out;
    const bool pinned_back = waved && plan.accessory == Accessory::leaf_comb;
    Chance chance(plan.seed * 13U + 3U);
    std::vector<std::vector<Vec3>> strands;
    strands.reserve(ground.roots.size());
    for (const Root& root : ground.roots) {
        const float layer = chance.unit();
        const float lift = plan.volume * smoothstep(0.0F, 3.0F, root.from_parting);
        const float reach = plan.length * (0.90F + 0.08F * chance.unit() + 0.04F * chance.bell()) *
                            (waved ? 0.97F : 1.0F);
        // Hair grown lower on the head is shorter at the same hem.
        const float hem = std::max(7.0F, reach - 0.85F * std::max(0.0F, 11.0F - root.point.y));
        Growth growth;
        growth.length = hem;
        growth.step = 0.5F;
        growth.turn = 0.30F;
        growth.wanted = [&](const Tip& tip) { return combed_down(tip, root, pinned_back); };
        growth.rest_height = [&](const Tip& tip) {
            const float full = (0.35F + 0.9F * lift) * (waved ? 1.15F : 1.0F);
            return 0.08F + layer * full + 0.10F * noise(root.point * 1.5F) +
                   0.02F * tip.grown * layer;
        };
        const Vec3 first = root.normal * (0.25F + 0.5F * lift) +
                           Vec3{root.side * 0.9F * clamp01(root.normal.y), -0.4F, -0.4F};
        strands.push_back(grow(ground, root, first, growth));
    }
    const auto locks = static_cast<std::uint32_t>(waved ? 300 : 520);
    const auto lock_of =
        gather_into_locks(strands, ground.roots, locks, waved ? 0.62F : 0.55F, chance);
    StrandSet set;
    for (std::size_t s = 0; s < strands.size(); ++s) {
        const Root& root = ground.roots[s];
        const std::uint32_t lock = lock_of[s];
        Wave wave;
        if (waved) {
            wave.width = plan.wave * (0.75F + 0.3F * hash_unit(lock, 3));
            wave.length = 7.2F;
            wave.starts = 8.0F + 1.5F * hash_unit(lock, 8);
            // Crests line up across the head, whatever height a lock grows at.
            wave.phase = -2.0F * pi * root.point.y / wave.length + 1.0F * noise(root.point * 0.2F) +
                         0.5F * hash_unit(lock, 6) + 0.10F * chance.bell();
            wave.roundness = 0.4F;
        } else {
            wave.width = 0.16F * plan.wave;
            wave.length = 9.0F + 4.0F * hash_unit(lock, 4);
            wave.starts = 3.0F;
            wave.phase = 6.0F * hash_unit(lock, 6);
        }
        bend_into_wave(strands[s], ground, wave);
        set.add(strands[s], strand_look(plan, root.point, chance));
    }
    add_strays(set, 0.018F, 1.1F, plan);
    return set;
}

}  // namespace quarterturn::demo
