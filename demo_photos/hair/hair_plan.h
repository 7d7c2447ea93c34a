#pragma once

// What a head of hair is asked to be, and what every style builder works with.

#include "demo_photos/hair/strands.h"
#include "demo_photos/shape/distance_grid.h"
#include "demo_photos/shape/noise.h"

namespace quarterturn::demo {

enum class Style { brushed_out, curls_pinned, low_bun, waves_down };
enum class Accessory { none, leaf_comb, pearl_pins, small_flowers };

/// Colours are linear reflectance.
struct HairPlan {
    Style style = Style::brushed_out;
    Accessory accessory = Accessory::none;
    Vec3 root_colour{0.055F, 0.025F, 0.012F};
    Vec3 tip_colour{0.165F, 0.077F, 0.035F};
    Vec3 accent_colour{0.33F, 0.18F, 0.085F};  ///< a lighter piece here and there
    float accent_share = 0.15F;
    float parting_x = 2.2F;  ///< cm from the middle, her left positive
    float length = 36.0F;    ///< cm, let down
    float wave = 1.0F;       ///< how strong curls and waves are
    float volume = 1.0F;
    Vec3 bun_centre{0.0F, -3.6F, -8.9F};
    float bun_radius = 3.5F;
    std::uint32_t strands = 60000;
    std::uint64_t seed = 1;
};

/// Where a strand grows.
struct Root {
    Vec3 point;
    Vec3 normal;
    float side = 1.0F;    ///< +1 falls to her left of the parting, -1 to her right
    float from_parting;   ///< cm
    float from_hairline;  ///< 0 at the hairline, 1 well inside
};

/// The solid head for hair to lie on, and the roots on it.
struct HairGround {
    const DistanceGrid& solid;  ///< face, skull, neck, cape
    std::vector<Root> roots;
};

/// 0 outside the hairline, 1 well inside, for a point on the skull.
float hairline(Vec3 p);

/// Roots spread evenly over the scalp of the mesh; the parting is kept thin.
std::vector<Root> scatter_roots(const Mesh& skull, const HairPlan& plan, std::uint32_t count);

/// Colour of one strand, drawn by chance around the plan's.
StrandLook strand_look(const HairPlan& plan, Vec3 root, Chance& chance);

}  // namespace quarterturn::demo
