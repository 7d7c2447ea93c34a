#include "demo_photos/hair/growing.h"
#include "demo_photos/hair/styles.h"

namespace quarterturn::demo {

namespace {

/// Curls sit in rows round the crown and down the back, brick fashion.
std::vector<CurlSeat> seat_curls(const HairGround& ground) {
    struct Row {
        float elevation;  ///< degrees above the middle of the skull
        int count;
        float from;  ///< degrees round from the back, to either side
    };
    constexpr Row rows[] = {{84, 1, 0}, {62, 4, 66}, {40, 6, 88}, {18, 6, 82}, {-3, 5, 66}};
    const Vec3 middle{0.0F, 3.2F, -1.3F};
    std::vector<CurlSeat> seats;
    for (const Row& row : rows) {
        for (int i = 0; i < row.count; ++i) {
            const float spread =
                row.count == 1
                    ? 0.0F
                    : (2.0F * static_cast<float>(i) / static_cast<float>(row.count - 1) - 1.0F);
            const float turn = degrees(180.0F + spread * row.from);
            const float up = degrees(row.elevation);
            const Vec3 ray{std::sin(turn) * std::cos(up), std::sin(up),
                           std::cos(turn) * std::cos(up)};
            Vec3 p = middle + ray * 6.0F;
            for (int step = 0; step < 40; ++step) {
                p += ray * (-ground.solid.at(p) * 0.8F);
            }
            const Vec3 out = ground.solid.outward(p);
            seats.push_back({p, out, normalize(cross(Vec3{0.0F, 1.0F, 0.02F}, out))});
        }
    }
    return seats;
}

std::vector<Vec3> wind(const Root& root, const CurlSeat& seat, Chance& chance) {
    const Vec3 down = cross(seat.outward, seat.along);
    const float wide = dot(root.point - seat.middle, seat.along);
    const float w = std::clamp(wide * 0.75F + 0.12F * chance.bell(), -1.75F, 1.75F);
    const float outer = 1.28F * (1.0F - 0.05F * w * w) + 0.05F * chance.bell();
    const Vec3 hub = seat.middle + seat.outward * (outer + 0.25F) + seat.along * w;
    std::vector<Vec3> run;
    const Vec3 first = hub - seat.outward * outer;
    for (int i = 0; i < 8; ++i) {
        const float t = static_cast<float>(i) / 8.0F;
        run.push_back(lerp(lerp(root.point, root.point + root.normal * 0.7F, t), first, t));
    }
    const float turns = 2.6F + 0.3F * chance.unit();
    const float slip = 0.25F * chance.bell();
    const int steps = 54;
    for (int i = 0; i <= steps; ++i) {
        const float t = static_cast<float>(i) / steps;
        const float a = turns * 2.0F * pi * t;
        const float r = outer * mix(1.0F, 0.52F, t);
        run.push_back(hub + seat.along * (slip * t) - seat.outward * (r * std::cos(a)) -
                      down * (r * std::sin(a)));
    }
    return run;
}

}  // namespace

StrandSet pin_curls(const HairGround& ground, const HairPlan& plan, std::vector<CurlSeat>& seats) {
    seats = seat_curls(ground);
    Chance chance(plan.seed * 43U + 9U);
    StrandSet set;
    HairGround left_down{ground.solid, {}};
    for (const Root& root : ground.roots) {
        float nearest = 1e9F;
        const CurlSeat* own = nullptr;
        for (const CurlSeat& seat : seats) {
            const float far = length(seat.middle - root.point);
            if (far < nearest) {
                nearest = far;
                own = &seat;
            }
        }
        const bool front_panel =
            root.point.z > 2.2F || (root.point.z > -0.5F && root.point.y < 5.5F);
        const bool nape = root.point.y < -1.2F;
        if (front_panel || nape || nearest > 4.2F) {
            left_down.roots.push_back(root);
            continue;
        }
        StrandLook look =
            strand_look(plan, own->middle + (root.point - own->middle) * 0.3F, chance);
        set.add(wind(root, *own, chance), look);
    }
    HairPlan rest = plan;
    rest.style = Style::brushed_out;
    rest.length = plan.length * 0.92F;
    set.append(let_down(left_down, rest));
    return set;
}

}  // namespace quarterturn::demo
