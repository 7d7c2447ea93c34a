#include "demo_photos/hair/growing.h"

#include <limits>

namespace quarterturn::demo {

std::vector<Vec3> grow(const HairGround& ground, const Root& root, Vec3 first_direction,
                       const Growth& growth) {
    std::vector<Vec3> run;
    run.reserve(static_cast<std::size_t>(growth.length / growth.step) + 2);
    Tip tip{root.point, root.normal, 0.0F, 0.0F};
    Vec3 heading = normalize(first_direction);
    run.push_back(tip.point);
    while (tip.grown < growth.length) {
        tip.outward = ground.solid.outward(tip.point);
        tip.height = ground.solid.at(tip.point);
        if (growth.done && growth.done(tip)) {
            break;
        }
        heading = normalize(lerp(heading, growth.wanted(tip), growth.turn));
        tip.point += heading * growth.step;
        tip.grown += growth.step;
        const float height = ground.solid.at(tip.point);
        const float rest =
            std::max(0.05F, growth.rest_height(tip) * smoothstep(0.0F, 2.0F, tip.grown));
        const float lift = rest - height;
        if (lift > 0.0F) {
            const Vec3 push = ground.solid.outward(tip.point);
            tip.point += push * (lift * 0.7F);
            heading = normalize(heading + push * std::max(0.0F, -dot(heading, push)));
        } else if (growth.cling > 0.0F) {
            tip.point += ground.solid.outward(tip.point) * (lift * growth.cling);
        }
        run.push_back(tip.point);
    }
    return run;
}

std::vector<std::uint32_t> gather_into_locks(std::vector<std::vector<Vec3>>& strands,
                                             const std::vector<Root>& roots, std::uint32_t locks,
                                             float strength, Chance& chance) {
    std::vector<std::uint32_t> leaders;
    for (std::uint32_t i = 0; i < locks; ++i) {
        leaders.push_back(
            static_cast<std::uint32_t>(chance.unit() * static_cast<float>(strands.size())));
    }
    const std::vector<std::vector<Vec3>> before = [&] {
        std::vector<std::vector<Vec3>> kept;
        for (const auto leader : leaders) {
            kept.push_back(strands[leader]);
        }
        return kept;
    }();
    std::vector<std::uint32_t> lock_of(strands.size(), 0);
    for (std::size_t s = 0; s < strands.size(); ++s) {
        float nearest = std::numeric_limits<float>::max();
        for (std::uint32_t l = 0; l < locks; ++l) {
            const Root& leader = roots[leaders[l]];
            const Vec3 off = leader.point - roots[s].point;
            const float far = dot(off, off) + (leader.side == roots[s].side ? 0.0F : 100.0F);
            if (far < nearest) {
                nearest = far;
                lock_of[s] = l;
            }
        }
        const auto& lead = before[lock_of[s]];
        auto& strand = strands[s];
        const float own = strength * (0.6F + 0.8F * hash_unit(static_cast<std::uint32_t>(s), 91));
        for (std::size_t i = 1; i < strand.size() && i < lead.size(); ++i) {
            const float t = static_cast<float>(i) / static_cast<float>(strand.size());
            strand[i] = lerp(strand[i], lead[i], std::min(0.92F, own * smoothstep(0.0F, 0.85F, t)));
        }
    }
    return lock_of;
}

void bend_into_wave(std::vector<Vec3>& strand, const HairGround& ground, const Wave& wave) {
    if (strand.size() < 3) {
        return;
    }
    const std::vector<Vec3> straight = strand;
    float grown = 0.0F;
    for (std::size_t i = 1; i < strand.size(); ++i) {
        const Vec3 along = straight[i] - straight[i - 1];
        grown += length(along);
        const float amount =
            wave.width * smoothstep(wave.starts, wave.starts + wave.length * 1.3F, grown);
        if (amount <= 0.0F) {
            continue;
        }
        const Vec3 t = normalize(along);
        const Vec3 out = ground.solid.outward(straight[i]);
        const Vec3 n = normalize(along_surface(out, t));
        const Vec3 b = cross(t, n);
        const float angle = 2.0F * pi * (grown - wave.starts) / wave.length + wave.phase;
        strand[i] += b * (amount * std::sin(angle)) +
                     n * (amount * wave.roundness * (1.0F - std::cos(angle)));
    }
}

void add_strays(StrandSet& set, float share, float reach, const HairPlan& plan) {
    Chance chance(plan.seed * 131U + 17U);
    const auto wanted = static_cast<std::size_t>(static_cast<float>(set.count()) * share);
    const std::size_t from = set.count();
    for (std::size_t n = 0; n < wanted; ++n) {
        const auto pick = static_cast<std::size_t>(chance.unit() * static_cast<float>(from));
        std::vector<Vec3> run(set.points.begin() + set.starts[pick],
                              set.points.begin() + set.starts[pick + 1]);
        const Vec3 shift = chance.in_ball() * 40.0F;
        const float far = reach * (0.4F + 1.2F * chance.unit() * chance.unit());
        const auto keep = static_cast<std::size_t>(static_cast<float>(run.size()) *
                                                   (0.35F + 0.65F * chance.unit()));
        run.resize(std::max<std::size_t>(keep, 3));
        // Over the shoulders a stray would only look like a scratch.
        while (run.size() > 3 && run.back().y < -11.0F) {
            run.pop_back();
        }
        for (std::size_t i = 0; i < run.size(); ++i) {
            const float t = static_cast<float>(i) / static_cast<float>(run.size());
            const Vec3 away = normalize(Vec3{run[i].x, (run[i].y - 2.0F) * 0.6F, run[i].z + 1.0F});
            run[i] += noise3(run[i] * 0.28F + shift) * (far * t * 1.4F) + away * (far * 0.55F * t);
        }
        StrandLook look = set.looks[pick];
        look.stray = true;
        look.width *= 0.7F;
        set.add(run, look);
    }
}

}  // namespace quarterturn::demo
