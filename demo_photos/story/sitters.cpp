#include "demo_photos/story/sitters.h"

namespace quarterturn::demo {

namespace {

/// Chestnut with lighter ends, parted on her left, leaf comb on her left.
Sitter client_a() {
    Sitter s;
    s.hair.seed = 11;
    return s;
}

/// Nearly black, deeper skin, parted in the middle, pearl pins.
Sitter client_b() {
    Sitter s;
    s.face = {0.97F, 1.04F, 1.10F, 1.12F};
    s.tone.skin = {0.30F, 0.155F, 0.09F};
    s.tone.lips = {0.27F, 0.085F, 0.075F};
    s.tone.cheek = {0.31F, 0.12F, 0.07F};
    s.tone.iris = {0.045F, 0.022F, 0.010F};
    s.tone.cape = {0.34F, 0.31F, 0.28F};
    s.brows = {0.012F, 0.009F, 0.008F};
    s.hair.root_colour = {0.011F, 0.008F, 0.007F};
    s.hair.tip_colour = {0.030F, 0.019F, 0.014F};
    s.hair.accent_colour = {0.07F, 0.036F, 0.02F};
    s.hair.accent_share = 0.06F;
    s.hair.parting_x = 0.0F;
    s.hair.length = 44.0F;
    s.hair.volume = 0.85F;
    s.hair.bun_centre = {0.0F, 0.6F, -11.2F};
    s.hair.bun_radius = 3.9F;
    s.hair.seed = 23;
    return s;
}

/// Copper, fair skin, parted on her right, flowers on her right.
Sitter client_c() {
    Sitter s;
    s.face = {1.02F, 0.94F, 0.94F, 0.92F};
    s.tone.skin = {0.68F, 0.45F, 0.35F};
    s.tone.lips = {0.55F, 0.22F, 0.19F};
    s.tone.cheek = {0.72F, 0.34F, 0.28F};
    s.tone.iris = {0.09F, 0.14F, 0.20F};
    s.tone.cape = {0.24F, 0.30F, 0.27F};
    s.brows = {0.11F, 0.05F, 0.025F};
    s.hair.root_colour = {0.17F, 0.058F, 0.018F};
    s.hair.tip_colour = {0.40F, 0.16F, 0.055F};
    s.hair.accent_colour = {0.62F, 0.33F, 0.13F};
    s.hair.accent_share = 0.2F;
    s.hair.parting_x = -2.6F;
    s.hair.length = 27.0F;
    s.hair.seed = 37;
    return s;
}

Accessory accessory_of(Who who) {
    switch (who) {
        case Who::a:
            return Accessory::leaf_comb;
        case Who::b:
            return Accessory::pearl_pins;
        case Who::c:
            return Accessory::small_flowers;
    }
    return Accessory::none;
}

}  // namespace

Sitter sitter_for(Who who, Style style) {
    Sitter s = who == Who::a ? client_a() : who == Who::b ? client_b() : client_c();
    s.hair.style = style;
    const bool finished = style == Style::low_bun || style == Style::waves_down;
    s.hair.accessory = finished ? accessory_of(who) : Accessory::none;
    return s;
}

}  // namespace quarterturn::demo
