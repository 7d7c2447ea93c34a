#include "demo_photos/story/angles.h"

#include "demo_photos/shape/noise.h"

namespace quarterturn::demo {

namespace {

struct Stand {
    const char* angle;
    float azimuth;
    float elevation;
};

constexpr Stand stands[] = {{"front", 0.0F, 4.0F},
                            {"left", 90.0F, 4.0F},
                            {"right", -90.0F, 4.0F},
                            {"back", 180.0F, 9.0F},
                            {"crown", 180.0F, 66.0F},
                            {"left three-quarter", 42.0F, 6.0F},
                            {"right three-quarter", -42.0F, 6.0F},
                            {"detail", 76.0F, 14.0F}};

}  // namespace

View view_for(const std::string& angle, Who who, Style style, std::uint32_t number) {
    View view;
    for (const Stand& stand : stands) {
        if (angle == stand.angle) {
            view.azimuth_deg = stand.azimuth;
            view.elevation_deg = stand.elevation;
        }
    }
    const auto sway = [&](std::uint32_t what) { return 2.0F * hash_unit(number, what) - 1.0F; };
    const bool hanging = style != Style::low_bun;
    view.target = {0.6F * sway(1), (hanging ? -4.2F : -1.2F) + 0.8F * sway(2), 0.0F};
    view.frame_cm = (hanging ? 47.0F : 40.0F) * (1.0F + 0.05F * sway(3));
    view.distance_cm = 88.0F * (1.0F + 0.05F * sway(4));
    view.azimuth_deg += 4.0F * sway(5);
    view.elevation_deg += 2.5F * sway(6);
    view.tilt_deg = 1.6F * sway(7);
    if (angle == "crown") {
        view.target = {0.3F * sway(1), 3.0F, -1.5F + 0.4F * sway(2)};
        view.frame_cm = (hanging ? 42.0F : 36.0F) * (1.0F + 0.04F * sway(3));
    }
    if (angle == "detail") {
        view.distance_cm = 60.0F;
        if (style == Style::curls_pinned) {
            view.azimuth_deg = 158.0F;
            view.target = {1.5F, 5.5F, -7.0F};
            view.frame_cm = 19.0F;
        } else if (who == Who::c) {
            view.azimuth_deg = -98.0F;
            view.target = {-7.0F, 5.0F, -3.5F};
            view.frame_cm = 21.0F;
        } else {
            view.target = {7.5F, 5.8F, -4.2F};
            view.frame_cm = 17.0F;
        }
    }
    return view;
}

View detail_of_bun(Who who) {
    View view;
    view.azimuth_deg = 197.0F;
    view.elevation_deg = 12.0F;
    view.distance_cm = 70.0F;
    view.target = sitter_for(who, Style::low_bun).hair.bun_centre;
    view.frame_cm = 17.0F;
    return view;
}

}  // namespace quarterturn::demo
