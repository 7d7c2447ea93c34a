// Heads from behind, hair down and hair up, in other light, before other walls, framed otherwise
// and with the camera held askew: laid upon each other by the top of the head and the shoulders.
// Where the head stands is known from the views the photos were made from.

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <vector>

#include "demo_photos/picture/canvas.h"
#include "demo_photos/picture/develop.h"
#include "demo_photos/story/angles.h"
#include "indexer/image/outline_matching.h"

namespace quarterturn {
namespace {

using demo::Style;

const cv::Size size_of_photo(384, 512);

struct Generated {
    std::optional<HeadOutline> outline;
    Spot top;   // of the skull
    Spot nape;  // both in heights of the picture
};

demo::View view_of(demo::Who who, Style style, int number) {
    auto view = demo::view_for("back", who, style, 1000 + 97 * static_cast<std::uint32_t>(number));
    if (number == 1) view.tilt_deg += 4;
    if (number == 2) {
        view.frame_cm *= 0.88F;
        view.target.x += 2;
    }
    return view;
}

demo::Lighting light_of(int number) {
    constexpr std::array<demo::Vec3, 3> walls{
        {{0.46F, 0.43F, 0.40F}, {0.2F, 0.24F, 0.3F}, {0.35F, 0.2F, 0.18F}}};
    demo::Lighting light;
    light.key_from_deg = number == 1 ? 45.0F : -40.0F;
    light.key_power = 0.7F + 0.2F * static_cast<float>(number);
    light.backdrop.seed = 3 + static_cast<std::uint32_t>(number) * 5;
    light.backdrop.wall = walls[static_cast<std::size_t>(number)];
    return light;
}

std::vector<Generated> photographed(demo::Who who, Style style) {
    demo::Head head(demo::sitter_for(who, style), 0.35F);
    std::vector<Generated> photos;
    for (int number = 0; number < 3; ++number) {
        const demo::View view = view_of(who, style, number);
        demo::Develop how;
        how.exposure_ev = 0.3F * static_cast<float>(number - 1);
        const cv::Mat bgr =
            develop(head.photograph(view, light_of(number), size_of_photo).linear, how);
        const demo::Camera camera(view, size_of_photo.width, size_of_photo.height);
        const auto seen = [&](demo::Vec3 place) {
            const auto at = camera.project(place);
            return Spot{at.x / size_of_photo.height, at.y / size_of_photo.height};
        };
        photos.push_back({head_outline(bgr), seen({0, 12.3F, -1}), seen({0, -5.8F, -7})});
    }
    return photos;
}

struct Tally {
    int pairs = 0;
    int laid = 0;
    double worst_size = 0;
    double worst_place = 0;  // both as a share of the head's height

    void add(const Generated& first, const Generated& second) {
        ++pairs;
        if (!first.outline || !second.outline) return;
        const auto lay = lay_outlines(*first.outline, *second.outline);
        if (!lay) return;
        ++laid;
        const double height = distance(first.top, first.nape);
        const Spot top = (*lay)(second.top);
        const Spot nape = (*lay)(second.nape);
        const Spot middle{(top.x + nape.x) / 2, (top.y + nape.y) / 2};
        const Spot wanted{(first.top.x + first.nape.x) / 2, (first.top.y + first.nape.y) / 2};
        worst_size = std::max(worst_size, std::abs(distance(top, nape) / height - 1));
        worst_place = std::max(worst_place, distance(middle, wanted) / height);
    }
};

TEST(HeadsFromBehind, AreLaidNearlyRightWhateverLightGroundAndFrame) {
    Tally tally;
    for (const auto who : {demo::Who::a, demo::Who::b, demo::Who::c}) {
        const auto before = photographed(who, Style::brushed_out);
        const auto after = photographed(who, Style::low_bun);
        for (const Generated& first : before) {
            for (const Generated& second : after) tally.add(first, second);
        }
    }
    std::printf(
        "Of %d generated pairs from behind %d are laid; worst size %.1f %%, place %.1f %%\n",
        tally.pairs, tally.laid, 100 * tally.worst_size, 100 * tally.worst_place);
    EXPECT_GE(tally.laid, tally.pairs * 3 / 4);
    EXPECT_LE(tally.worst_size, 0.05);
    EXPECT_LE(tally.worst_place, 0.06);
}

}  // namespace
}  // namespace quarterturn
