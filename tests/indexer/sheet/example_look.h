#pragma once
// A look as its records say it is, put together by hand.

#include "indexer/looks/look_state.h"

namespace quarterturn {

inline LocalTime moment(const char* iso) {
    return parse_local_time(iso).value();
}

// Photos of one look; the state is judged anew by state().
class ExampleLook {
  public:
    ExampleLook() {
        state_.look.id = {7};
        state_.look.name = "Low twisted bun";
        state_.client.name = "Mira Okonjo-Lindqvist";
        Wedding wedding;
        wedding.name = "Okonjo-Lindqvist and Vale";
        wedding.date = parse_date("2026-11-21").value();
        wedding.venue = "The Old Granary";
        state_.wedding = wedding;
    }

    // Each photo is a minute later than the last.
    Photo& add(std::optional<Stage> stage, std::optional<Angle> angle,
               std::vector<Flaw> flaws = {}) {
        const auto number = static_cast<std::int64_t>(state_.photos.size()) + 1;
        Photo photo;
        photo.id = {number};
        photo.file.name = "shot" + std::to_string(number) + ".jpg";
        photo.file.path = "photos/" + photo.file.name;
        photo.file.width = 1500;
        photo.file.height = 2000;
        photo.moment = moment("2026-11-07T10:00") + std::chrono::minutes(number);
        photo.flaws = std::move(flaws);
        photo.measures.focus = 100;
        photo.tags.look = state_.look.id;
        photo.tags.stage = stage;
        photo.tags.angle = angle;
        state_.photos.push_back(photo);
        return state_.photos.back();
    }

    void add_all_quarters(Stage stage) {
        for (const Angle angle : quarter_angles) add(stage, angle);
    }

    std::vector<Waiver> waivers;
    ShotList shot_list = default_shot_list();

    LookState& state() {
        state_.coverage = judge_coverage(state_.look, shot_list, state_.photos, waivers);
        return state_;
    }

  private:
    LookState state_;
};

}  // namespace quarterturn
