#include "demo_photos/story/shots.h"

#include "demo_photos/device/clock.h"
#include "demo_photos/shape/noise.h"
#include "demo_photos/story/angles.h"

#include <cstdio>
#include <map>

namespace quarterturn::demo {

namespace {

/// What a run of photos has in common.
struct Scene {
    const char* day;
    const char* sitting;
    const char* look;
    const char* stage;
    Who who;
    Style style;
    Lighting light;
};

class Roll {
  public:
    void scene(const Scene& next) { scene_ = next; }

    /// `time` is "10:04:12.345", true time.
    Shot& take(Device device, const char* time, const char* angle) {
        Shot shot;
        shot.device = device;
        shot.day = scene_.day;
        shot.millisecond = parse_time_of_day(time);
        shot.who = scene_.who;
        shot.style = scene_.style;
        shot.sitting = scene_.sitting;
        shot.look = scene_.look;
        shot.stage = scene_.stage;
        shot.angle = angle;
        shot.light = scene_.light;
        const auto number = static_cast<std::uint32_t>(shots_.size());
        shot.view = view_for(angle, scene_.who, scene_.style, number);
        shot.develop.seed = number + 1;
        shot.develop.warmth = scene_.light.warmth;
        shot.develop.grain = device == Device::phone ? 0.009F : 0.006F;
        if (device == Device::camera) {
            shot.view.distance_cm = 130.0F;
            shot.view.frame_cm *= 1.10F;
        }
        // Phones store what the sensor read; held upright that is turned.
        shot.orientation = device == Device::phone ? 6 : 1;
        shots_.push_back(shot);
        return shots_.back();
    }
    Shot& phone(const char* time, const char* angle) { return take(Device::phone, time, angle); }
    Shot& camera(const char* time, const char* angle) { return take(Device::camera, time, angle); }

    std::vector<Shot>& shots() { return shots_; }

  private:
    Scene scene_{};
    std::vector<Shot> shots_;
};

Lighting window(float from_deg, float warmth, std::uint32_t room) {
    Lighting light;
    light.key_from_deg = from_deg;
    light.warmth = warmth;
    light.backdrop.seed = room;
    light.backdrop.window_at = from_deg < 0.0F ? -0.9F : 0.9F;
    return light;
}

void trial_of_a(Roll& roll) {
    const Lighting light = window(-42.0F, 0.15F, 1);
    roll.scene(
        {"2026-11-07", "a-trial", "a-ceremony", "before", Who::a, Style::brushed_out, light});
    roll.phone("10:04:12.312", "front").at_sea = true;
    roll.phone("10:04:31.870", "right").at_sea = true;
    roll.phone("10:04:55.140", "back").develop.flaw = Flaw::moved;
    roll.phone("10:05:02.655", "back").orientation = 8;
    roll.phone("10:05:20.048", "left").at_sea = true;
    Shot& glass = roll.phone("10:05:48.530", "front");
    glass.mirrored = true;
    glass.orientation = 1;

    roll.scene(
        {"2026-11-07", "a-trial", "a-ceremony", "during", Who::a, Style::curls_pinned, light});
    roll.phone("10:52:06.402", "back");
    roll.phone("10:52:19.981", "left");
    roll.phone("10:52:40.267", "right three-quarter").orientation = 8;
    roll.phone("10:53:02.733", "crown").orientation = 3;
    // By the slow clock this is before the trial began: how the shift is noticed.
    roll.camera("10:46:31.240", "detail");

    roll.scene({"2026-11-07", "a-trial", "a-ceremony", "after", Who::a, Style::low_bun, light});
    Shot& first = roll.phone("12:02:10.118", "front");
    first.heic = true;
    first.turned_in_file = true;
    roll.phone("12:02:24.590", "left");
    const char* burst_times[] = {"12:02:41.120", "12:02:41.410", "12:02:41.730", "12:02:42.050",
                                 "12:02:42.380"};
    const float softness[] = {0.7F, 2.4F, 0.0F, 3.4F, 1.4F};
    View steady;
    for (int i = 0; i < 5; ++i) {
        Shot& shot = roll.phone(burst_times[i], "back");
        if (i == 0) {
            steady = shot.view;
        }
        shot.view = steady;
        shot.view.azimuth_deg += 0.5F * static_cast<float>(i - 2);
        shot.view.target.y += 0.08F * static_cast<float>((i * 3) % 5 - 2);
        shot.develop.softness = softness[i];
        shot.burst = "a-back";
    }
    roll.phone("12:03:05.217", "right").develop.flaw = Flaw::moved;
    roll.phone("12:03:12.904", "right");
    roll.phone("12:03:30.332", "crown").develop.flaw = Flaw::blown_out;
    roll.phone("12:03:38.716", "crown").orientation = 3;
    roll.phone("12:04:02.049", "left three-quarter").heic = true;
    roll.phone("12:04:20.651", "right three-quarter").develop.colour = ColourSpace::display_p3;
    roll.phone("12:04:41.385", "detail");
    Shot& own = roll.phone("12:05:15.801", "left three-quarter");
    own.mirrored = true;
    own.orientation = 1;
    roll.camera("12:07:03.520", "front").develop.flaw = Flaw::too_dark;
    roll.camera("12:07:21.150", "front");
    roll.camera("12:07:44.830", "left").develop.flaw = Flaw::out_of_focus;
    roll.camera("12:07:52.470", "left").keyword = "left";
    roll.camera("12:08:20.910", "back").orientation = 8;
    roll.camera("12:08:41.360", "right three-quarter").develop.flaw = Flaw::moved;
    Shot& bun = roll.camera("12:09:10.770", "detail");
    bun.view = detail_of_bun(Who::a);

    roll.scene({"2026-11-07", "a-trial", "a-evening", "after", Who::a, Style::waves_down, light});
    roll.phone("12:41:07.226", "front").develop.colour = ColourSpace::display_p3;
    roll.phone("12:41:22.915", "left").develop.flaw = Flaw::moved;
    roll.phone("12:41:29.404", "left");
    roll.phone("12:41:55.638", "back").develop.flaw = Flaw::out_of_focus;
    roll.phone("12:42:14.071", "right");
    roll.phone("12:42:33.542", "right three-quarter").develop.flaw = Flaw::too_dark;
    roll.phone("12:42:41.190", "right three-quarter").heic = true;
    roll.camera("12:44:05.680", "left three-quarter");
}

void look_of_b(Roll& roll) {
    const Lighting trial = window(40.0F, -0.1F, 2);
    roll.scene(
        {"2026-08-22", "b-trial", "b-ceremony", "before", Who::b, Style::brushed_out, trial});
    roll.phone("14:10:03.377", "front");
    roll.phone("14:10:18.820", "left");
    roll.phone("14:10:36.251", "back");
    roll.phone("14:10:50.964", "right").develop.flaw = Flaw::out_of_focus;
    roll.phone("14:10:58.119", "right");
    roll.scene({"2026-08-22", "b-trial", "b-ceremony", "after", Who::b, Style::low_bun, trial});
    roll.phone("15:30:02.448", "front");
    roll.phone("15:30:21.736", "left");
    roll.phone("15:30:44.093", "back").name_end = "_back";
    roll.phone("15:31:05.512", "right");
    roll.camera("15:32:10.300", "detail").view = detail_of_bun(Who::b);

    Lighting day = window(-36.0F, -0.35F, 5);
    day.key_power = 0.95F;
    day.backdrop.wall = {0.34F, 0.38F, 0.37F};
    roll.scene({"2026-10-10", "b-day", "b-ceremony", "after", Who::b, Style::low_bun, day});
    roll.phone("11:46:12.205", "front").develop.flaw = Flaw::blown_out;
    roll.phone("11:46:20.681", "front");
    Shot& glass = roll.phone("11:46:37.940", "left");
    glass.mirrored = true;
    glass.orientation = 1;
    roll.phone("11:46:58.333", "left");
    roll.phone("11:47:15.027", "back").heic = true;
    roll.phone("11:47:32.718", "right").orientation = 8;
}

void trial_of_c(Roll& roll) {
    Lighting light = window(-48.0F, 0.35F, 7);
    light.backdrop.wall = {0.47F, 0.40F, 0.34F};
    roll.scene(
        {"2026-11-14", "c-trial", "c-ceremony", "before", Who::c, Style::brushed_out, light});
    roll.phone("15:03:09.640", "front");
    roll.phone("15:03:27.158", "left");
    roll.phone("15:03:51.402", "back");
    roll.scene(
        {"2026-11-14", "c-trial", "c-ceremony", "during", Who::c, Style::curls_pinned, light});
    roll.phone("15:48:30.775", "left three-quarter");
    roll.scene({"2026-11-14", "c-trial", "c-ceremony", "after", Who::c, Style::waves_down, light});
    roll.phone("16:41:05.093", "front");
    roll.phone("16:41:24.517", "right");
    Shot& soft = roll.camera("16:43:12.140", "right three-quarter");
    soft.develop.flaw = Flaw::out_of_focus;
    roll.camera("16:43:20.610", "right three-quarter");
    roll.phone("16:44:02.886", "detail");
}

void name_files(std::vector<Shot>& shots) {
    std::map<std::string, int> same_second;
    int counter = 412;
    std::string day_of_camera;
    for (Shot& shot : shots) {
        if (shot.heic && !shot.turned_in_file) {
            shot.orientation = 1;
        }
        if (shot.device == Device::camera) {
            if (!day_of_camera.empty() && day_of_camera != shot.day) {
                counter += 37;
            }
            day_of_camera = shot.day;
            char name[32];
            std::snprintf(name, sizeof name, "camera/QTC_%04d.JPG", counter++);
            shot.file = name;
            continue;
        }
        std::string stem = shot.day;
        std::erase(stem, '-');
        std::string clock = time_of_day(shot.millisecond).substr(0, 8);
        std::erase(clock, ':');
        stem += "_" + clock;
        const int again = same_second[stem]++;
        if (again > 0) {
            stem += "_" + std::to_string(again + 1);
        }
        shot.file = "phone/" + stem + shot.name_end + (shot.heic ? ".heic" : ".jpg");
    }
}

}  // namespace

std::vector<Shot> all_shots() {
    Roll roll;
    look_of_b(roll);
    roll.scene({"2026-11-05", "", "", "", Who::a, Style::brushed_out, window(-42.0F, 0.2F, 1)});
    Shot& comb = roll.phone("18:22:40.507", "");
    comb.still_life = true;
    comb.orientation = 6;
    trial_of_a(roll);
    trial_of_c(roll);
    name_files(roll.shots());
    return roll.shots();
}

}  // namespace quarterturn::demo
