// Hair done otherwise changes where the top of it stands by up to 3 % of the head's height, and
// with curlers by more; the bare head is what must be equally large. Where its parts stand in the
// demo photos is known from the views they were rendered from.

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <map>
#include <numbers>

#include "demo_photos/picture/canvas.h"
#include "demo_photos/story/shots.h"
#include "tests/support/true_heads.h"

namespace quarterturn {
namespace {

// In heights of the picture, the right way round.
struct BareHead {
    Spot top;     // of the skull; from above the brow
    Spot bottom;  // chin, from behind the nape; from above the back of the skull
    double roll_degrees = 0;
};

// Places on the head as demo_photos/head.cpp marks them; the crown of the skull as
// demo_photos/shape/head_shape.h tells it.
BareHead bare_head(const demo::Shot& shot) {
    constexpr int height = 2000;
    const int width = shot.device == demo::Device::camera ? 1400 : 1500;
    const demo::Camera camera(shot.view, width, height);
    const auto seen = [&](demo::Vec3 place) {
        const auto at = camera.project(place);
        return Spot{at.x / height, at.y / height};
    };
    const double roll = shot.view.tilt_deg;
    if (shot.angle == "crown") return {seen({0, 5, 8.7F}), seen({0, 4, -9.9F}), roll};
    const Spot top = seen({0, 12.3F, -1});
    if (shot.angle == "back") return {top, seen({0, -5.8F, -7}), roll};
    return {top, seen({0, -9.35F, 7}), roll};
}

std::map<std::string, BareHead> bare_heads() {
    std::map<std::string, BareHead> heads;
    for (const demo::Shot& shot : demo::all_shots()) {
        if (!shot.still_life) heads[shot.file] = bare_head(shot);
    }
    return heads;
}

struct Off {
    double size = 0;          // share of the head's height
    double place = 0;         // of the middle, in heights of the head
    double turn_degrees = 0;  // of the camera's roll

    bool within(double most_place) const {
        return size <= 0.03 && place <= most_place && turn_degrees <= 2;
    }
    bool near() const { return size <= 0.06 && place <= 0.06 && turn_degrees <= 2; }
};

Off off_by(const Similarity& lay, const BareHead& first, const BareHead& second) {
    const Spot top = lay(second.top);
    const Spot bottom = lay(second.bottom);
    const double height = distance(first.top, first.bottom);
    const Spot middle{(first.top.x + first.bottom.x) / 2, (first.top.y + first.bottom.y) / 2};
    const Spot laid{(top.x + bottom.x) / 2, (top.y + bottom.y) / 2};
    const double turn = lay.turn() * 180 / std::numbers::pi;
    return {std::abs(distance(top, bottom) / height - 1), distance(middle, laid) / height,
            std::abs(turn - (second.roll_degrees - first.roll_degrees))};
}

// Where the camera stood a few degrees further round the second time, the face stands elsewhere on
// the head, which no shift can mend; it shows most from three-quarters.
double most_place(const std::string& angle) {
    return angle.ends_with("three-quarter") ? 0.025 : 0.02;
}

// Errors of several pairs; of each kind, as a share of the head's height or in degrees.
struct ErrorsOfMany {
    std::vector<double> size, place, turn;

    void add(const Off& off) {
        size.push_back(off.size);
        place.push_back(off.place);
        turn.push_back(off.turn_degrees);
    }
    static double median(std::vector<double> values) {
        std::ranges::sort(values);
        return values.empty() ? 0 : values[values.size() / 2];
    }
    static double worst(const std::vector<double>& values) {
        return values.empty() ? 0 : std::ranges::max(values);
    }
    std::string text() const {
        char line[80];
        std::snprintf(line, sizeof line, "%5.1f%% %5.1f%% %5.1f%% %5.1f%% %4.1f° %4.1f°",
                      100 * median(size), 100 * worst(size), 100 * median(place),
                      100 * worst(place), median(turn), worst(turn));
        return line;
    }
};

struct Figures {
    int pairs = 0;
    int sure = 0;
    int within = 0;
    int near = 0;
    ErrorsOfMany of_sure, of_all;

    void add(const Off& off, bool is_within, bool is_sure) {
        ++pairs;
        sure += is_sure;
        within += is_within;
        near += off.near();
        of_all.add(off);
        if (is_sure) of_sure.add(off);
    }
};

void print(const std::map<std::string, Figures>& by_angle) {
    std::puts("Median and worst size, place and turn of the sure ones and of all:");
    for (const auto& [angle, own] : by_angle) {
        std::printf("%-20s %3d pairs, %3d sure, %3d within, %3d near |%s |%s\n", angle.c_str(),
                    own.pairs, own.sure, own.within, own.near, own.of_sure.text().c_str(),
                    own.of_all.text().c_str());
    }
}

bool done_otherwise(const TruePhoto& first, const TruePhoto& second) {
    return !first.is_like(second) && first.row.at("client") == second.row.at("client") &&
           first.row.at("angle") == second.row.at("angle");
}

// ALIGNED_EVERY=1 lays all pairs, which takes as long as all other measures of accuracy together.
int every_which_pair() {
    const char* said = std::getenv("ALIGNED_EVERY");
    return said == nullptr ? 3 : std::max(1, std::atoi(said));
}

TEST(BeforeAndAfterAlignment, IsWithinItsLimitsWhereItIsSure) {
    std::map<std::string, int> met;
    HeadFinder finder;
    const auto bare = bare_heads();
    const auto photos = heads_of_the_demo();
    std::map<std::string, Figures> by_angle;
    for (const TruePhoto& first : photos) {
        for (const TruePhoto& second : photos) {
            if (&second <= &first || !done_otherwise(first, second)) continue;
            if (met[first.row.at("angle")]++ % every_which_pair() != 0) continue;
            const HeadAlignment laid = align_heads(finder, first.picture, second.picture);
            const std::string& file = first.row.at("file");
            const std::string& other = second.row.at("file");
            const Off off = off_by(laid.second_onto_first, bare.at(file), bare.at(other));
            const std::string& angle = first.row.at("angle");
            const bool within = off.within(most_place(angle));
            by_angle[angle].add(off, within, laid.sure());
            EXPECT_TRUE(!laid.sure() || within)
                << angle << ": " << file << " and " << other << ": size " << 100 * off.size
                << " %, place " << 100 * off.place << " %, turn " << off.turn_degrees << "°, whole "
                << laid.agreement;
        }
    }
    print(by_angle);
    // As many as this are laid without her help: of all pairs, or of each third.
    using Least = std::map<std::string, int>;
    const Least of_all{{"front", 11}, {"left", 11}, {"right", 5}, {"back", 2}};
    const Least of_thirds{{"front", 4}, {"left", 3}, {"right", 1}, {"back", 1}};
    const int every = every_which_pair();
    if (every == 1 || every == 3) {
        for (const auto& [angle, least] : every == 1 ? of_all : of_thirds) {
            EXPECT_GE(by_angle[angle].sure, least) << angle;
        }
    }
    // From behind she moves the heads a little where they are not laid surely: the head's outline
    // tells neither how far round the camera stood nor how high hair stands on it.
    const Figures& behind = by_angle["back"];
    EXPECT_GE(behind.near, behind.pairs * 9 / 10);
    EXPECT_LE(ErrorsOfMany::median(behind.of_all.size), 0.03);
    EXPECT_LE(ErrorsOfMany::median(behind.of_all.place), 0.04);
}

}  // namespace
}  // namespace quarterturn
