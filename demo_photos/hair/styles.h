#pragma once

#include "demo_photos/hair/hair_plan.h"

namespace quarterturn::demo {

/// Long hair let down: brushed smooth, or in waves with one side pinned back.
StrandSet let_down(const HairGround& ground, const HairPlan& plan);

/// Crown and back wound into pinned curls, front and side sections still down.
/// `clips` receives the middle, outward and sideways direction of every curl.
struct CurlSeat {
    Vec3 middle;
    Vec3 outward;
    Vec3 along;
};
StrandSet pin_curls(const HairGround& ground, const HairPlan& plan, std::vector<CurlSeat>& seats);

/// Side parting, swept back into a twisted bun.
StrandSet low_bun(const HairGround& ground, const HairPlan& plan);

/// Brows and lashes of the head.
StrandSet brows_and_lashes(const Field& skin, float face_width, Vec3 colour, std::uint64_t seed);

}  // namespace quarterturn::demo
