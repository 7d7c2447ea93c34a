#include <algorithm>

#include "indexer/looks/wedding_board.h"
#include "indexer/record/date_words.h"
#include "indexer/rules/heat_and_spray.h"

namespace quarterturn {
namespace {

std::string standing_of(const LookState& state) {
    std::string standing = state.sign_off
                               ? "Signed off on " + long_date(date_of(state.sign_off->signed_at))
                               : "Not signed off";
    return standing + ".";
}

std::vector<std::string> changes_of(const LookState& state) {
    std::vector<std::string> changes = state.changes_since;
    if (state.draft) {
        changes.emplace_back(state.recipe ? "The recipe was written on since and not saved yet: "
                                            "what is saved stands here."
                                          : "The recipe is not saved yet.");
    }
    return changes;
}

std::string why_empty(const LookState& state, const Shot& shot) {
    const auto line = std::ranges::find(state.coverage.lines, shot,
                                        [](const CoverageLine& each) { return each.wanted.shot; });
    if (line == state.coverage.lines.end()) return "No photo of this angle was asked for.";
    if (line->verdict == Coverage::waived) return "Waived: " + line->waived_because;
    std::string gap = gap_text(*line);
    gap.front() = gap.front() == 'n' ? 'N' : 'T';  // "no …" or "the best …"
    return gap + ".";
}

class ShotGatherer {
  public:
    ShotGatherer(Library& library, const LookState& state) : library_(library), state_(state) {}

    std::vector<BoardShot> gather() {
        std::vector<BoardShot> shots;
        for (const Angle angle : quarter_angles) shots.push_back(shot_of(angle));
        for (const Angle angle : further_angles) {
            BoardShot shot = shot_of(angle);
            if (shot.photo) shots.push_back(std::move(shot));
        }
        return shots;
    }

  private:
    BoardShot shot_of(Angle angle) {
        const Shot shot{Stage::after, angle};
        auto photos = photos_of_shot(state_.look, shot, state_.photos);
        std::erase_if(photos, [](const Photo& photo) { return !usable(photo); });
        if (photos.empty()) return {angle, std::nullopt, why_empty(state_, shot)};
        const auto of_a_trial =
            std::ranges::find_if(photos, [&](const Photo& photo) { return !of_the_day(photo); });
        return {angle, of_a_trial == photos.end() ? photos.front() : *of_a_trial, {}};
    }

    bool of_the_day(const Photo& photo) {
        if (!photo.tags.sitting) return false;
        const auto sitting = library_.sittings().find(*photo.tags.sitting);
        return sitting && sitting->kind == SittingKind::wedding_day;
    }

    Library& library_;
    const LookState& state_;
};

// Clips hold hair while it is worked on and come out again; pins stay (common practice).
bool is_clip(const Pins& pins) {
    return pins.kind.find("clip") != std::string::npos;
}

int count_of(const Step& step, bool clips) {
    int count = 0;
    for (const Pins& pins : step.pins) {
        if (is_clip(pins) == clips) count += std::max(0, pins.count.value_or(0));
    }
    return count;
}

std::vector<Photo> photos_of(Library& library, const Step& step) {
    std::vector<Photo> photos;
    for (const std::string& sha256 : step.photos) {
        const auto id = library.photos().with_sha256(sha256);
        if (!id) continue;
        if (auto photo = library.photos().find(*id)) photos.push_back(std::move(*photo));
    }
    return photos;
}

void add_waiting(const Step& step, BoardStep& shown) {
    const auto take = [&](std::optional<int> minutes, const char* what) {
        if (shown.waiting_minutes || minutes.value_or(0) <= 0) return;
        shown.waiting_minutes = minutes;
        shown.waits_for = what;
    };
    take(step.setting.cooling_minutes, "cooling");
    take(step.waiting_minutes, "waiting");
}

std::vector<BoardStep> steps_of(Library& library, const Recipe& recipe,
                                const std::vector<StepTick>& ticks) {
    std::vector<BoardStep> steps;
    for (const Step& step : recipe.build) {
        BoardStep shown;
        shown.words = step_text(step);
        shown.cautions = cautions_beside(step);
        shown.photos = photos_of(library, step);
        shown.pins = count_of(step, false);
        shown.clips = count_of(step, true);
        add_waiting(step, shown);
        const StepTick tick{static_cast<int>(steps.size()), shown.words};
        shown.done = std::ranges::find(ticks, tick) != ticks.end();
        steps.push_back(std::move(shown));
    }
    return steps;
}

void add_parts(const Recipe& recipe, BoardLook& look) {
    Recipe before = recipe;
    before.cautions.clear();
    before.caution_details = {};
    before.build.clear();
    before.pieces.clear();
    before.accessory.clear();
    before.finish.clear();
    before.finish_details = {};
    before.second_look.reset();
    before.feedback.clear();
    before.feedback_details = {};
    before.hands_on_minutes.reset();
    before.waiting_minutes.reset();
    look.before_build = recipe_parts(before);
    Recipe after;
    after.pieces = recipe.pieces;
    after.accessory = recipe.accessory;
    after.finish = recipe.finish;
    after.finish_details = recipe.finish_details;
    after.second_look = recipe.second_look;
    after.feedback = recipe.feedback;
    after.feedback_details = recipe.feedback_details;
    after.hands_on_minutes = recipe.hands_on_minutes;
    after.waiting_minutes = recipe.waiting_minutes;
    look.after_build = recipe_parts(after);
    look.before_build_cautions = cautions_beside_prep(recipe);
    look.after_build_cautions = cautions_beside_finish(recipe);
}

}  // namespace

int BoardLook::pins() const {
    int count = 0;
    for (const BoardStep& step : steps) count += step.pins;
    return count;
}

int BoardLook::pins_in() const {
    int count = 0;
    for (const BoardStep& step : steps) count += step.done ? step.pins : 0;
    return count;
}

std::vector<BoardShot> board_shots(Library& library, const LookState& state) {
    return ShotGatherer(library, state).gather();
}

const Recipe* BoardLook::recipe() const {
    if (state.recipe) return &state.recipe->recipe;
    return state.draft ? &state.draft->recipe : nullptr;
}

BoardLook board_look(Library& library, WeddingId wedding, LookId id) {
    BoardLook look;
    look.state = look_state(library, id);
    look.standing = standing_of(look.state);
    look.changes = changes_of(look.state);
    look.shots = board_shots(library, look.state);
    if (const Recipe* recipe = look.recipe()) {
        look.steps = steps_of(library, *recipe, library.boards().ticks(wedding, id));
        add_parts(*recipe, look);
    }
    return look;
}

}  // namespace quarterturn
