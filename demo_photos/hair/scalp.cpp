#include "demo_photos/hair/hair_plan.h"

#include <array>

namespace quarterturn::demo {

namespace {

struct LinePoint {
    float turn;    ///< degrees from the front, either way round
    float height;  ///< cm
};

constexpr std::array<LinePoint, 15> line{{{0, 8.3F},
                                          {20, 8.3F},
                                          {36, 7.7F},
                                          {48, 6.4F},
                                          {58, 4.4F},
                                          {66, 2.4F},
                                          {72, 0.4F},
                                          {78, 0.0F},
                                          {84, 1.6F},
                                          {92, 3.0F},
                                          {102, 2.6F},
                                          {114, 0.0F},
                                          {128, -2.8F},
                                          {148, -4.8F},
                                          {181, -5.6F}}};

}  // namespace

float hairline(Vec3 p) {
    const float turn = std::atan2(std::abs(p.x), p.z + 1.0F) * 180.0F / pi;
    std::size_t i = 0;
    while (i + 2 < line.size() && line[i + 1].turn < turn) {
        ++i;
    }
    const float t = smoothstep(line[i].turn, line[i + 1].turn, turn);
    const float height = mix(line[i].height, line[i + 1].height, t) + 0.25F * noise(p * 1.3F);
    return smoothstep(0.0F, 1.1F, p.y - height);
}

std::vector<Root> scatter_roots(const Mesh& skull, const HairPlan& plan, std::uint32_t count) {
    std::vector<double> area_up_to;
    std::vector<std::size_t> triangle_of;
    double total = 0.0;
    for (std::size_t t = 0; t < skull.triangles.size(); ++t) {
        const auto& c = skull.triangles[t];
        const Vec3 a = skull.points[c[0]];
        if (hairline(a) <= 0.0F) {
            continue;
        }
        total += static_cast<double>(length(cross(skull.points[c[1]] - a, skull.points[c[2]] - a)));
        area_up_to.push_back(total);
        triangle_of.push_back(t);
    }
    Chance chance(plan.seed * 77U + 5U);
    std::vector<Root> roots;
    roots.reserve(count);
    while (roots.size() < count) {
        const double pick = static_cast<double>(chance.unit()) * total;
        const auto found =
            std::lower_bound(area_up_to.begin(), area_up_to.end(), pick) - area_up_to.begin();
        const auto& c = skull.triangles[triangle_of[std::min(static_cast<std::size_t>(found),
                                                             triangle_of.size() - 1)]];
        float u = chance.unit();
        float v = chance.unit();
        if (u + v > 1.0F) {
            u = 1.0F - u;
            v = 1.0F - v;
        }
        const float w = 1.0F - u - v;
        Root root;
        root.point = skull.points[c[0]] * w + skull.points[c[1]] * u + skull.points[c[2]] * v;
        root.normal =
            normalize(skull.normals[c[0]] * w + skull.normals[c[1]] * u + skull.normals[c[2]] * v);
        root.from_hairline = hairline(root.point);
        if (root.from_hairline < chance.unit() * 0.9F) {
            continue;
        }
        // The parting runs back from the hairline and ends at the crown.
        const float parting = plan.parting_x * smoothstep(-7.0F, 2.0F, root.point.z) +
                              0.12F * noise(root.point * 0.9F);
        const bool parted = root.point.z > -4.0F && root.point.y > 4.0F;
        const float off = root.point.x - parting + (parted ? 0.0F : 0.8F * chance.bell());
        // Thick along the parting, or it would show as a bare stripe.
        const float crowd = parted ? smoothstep(1.5F, 0.2F, std::abs(off)) : 0.0F;
        if ((parted && std::abs(off) < 0.06F) || chance.unit() > 0.42F + 0.58F * crowd) {
            continue;
        }
        root.side = off > 0.0F ? 1.0F : -1.0F;
        root.from_parting = std::abs(off);
        roots.push_back(root);
    }
    return roots;
}

StrandLook strand_look(const HairPlan& plan, Vec3 root, Chance& chance) {
    // Neighbours share a tone; single hairs stray from it.
    const float patch = noise(root * 1.1F + Vec3{0.0F, 9.0F, 3.0F} * static_cast<float>(plan.seed));
    const float lightness = std::exp(0.20F * chance.bell() + 0.16F * patch);
    StrandLook look;
    look.root_colour = plan.root_colour * lightness;
    look.tip_colour = plan.tip_colour * lightness;
    const float share = plan.accent_share * (1.0F + 1.6F * noise(root * 1.9F));
    if (chance.unit() < share) {
        look.tip_colour = lerp(look.tip_colour, plan.accent_colour, 0.45F + 0.5F * chance.unit());
        look.root_colour = lerp(look.root_colour, plan.accent_colour, 0.25F);
    }
    const float warm = 1.0F + 0.07F * chance.bell();
    look.root_colour = look.root_colour * Vec3{warm, 1.0F, 1.0F / warm};
    look.tip_colour = look.tip_colour * Vec3{warm, 1.0F, 1.0F / warm};
    look.width = 0.0085F * (1.0F + 0.2F * chance.bell());
    look.shine = 0.75F + 0.5F * chance.unit();
    return look;
}

}  // namespace quarterturn::demo
