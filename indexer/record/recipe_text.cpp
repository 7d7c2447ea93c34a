#include "indexer/record/recipe_text.h"

#include <algorithm>
#include <functional>

#include "indexer/record/recipe/joined_words.h"

namespace quarterturn {
namespace {

using Lines = std::vector<std::string>;

// The lines of one part; what is empty adds none.
class PartLines {
  public:
    PartLines& add(const std::string& text, std::string_view label = {}) {
        if (!text.empty()) lines_.push_back(std::string(label).append(text));
        return *this;
    }
    template <class Items, class Text>
    PartLines& each(const Items& items, Text text) {
        for (const auto& item : items) add(text(item));
        return *this;
    }
    PartLines& each(const Lines& lines) { return each(lines, std::identity{}); }

    Lines lines() { return std::move(lines_); }

  private:
    Lines lines_;
};

Lines hair_lines(const Recipe& recipe) {
    const HairOnTheDay& hair = recipe.hair_on_the_day;
    return PartLines{}
        .add(recipe.hair)
        .add(hair.washed, "Washed: ")
        .add(hair.damp, "Dry or damp: ")
        .add(hair.length, "Length: ")
        .add(hair.texture, "Texture: ")
        .add(hair.density, "Density: ")
        .add(hair.colour, "Colour: ")
        .add(hair.layers, "Layers: ")
        .add(hair.extensions, "Extensions: ")
        .add(hair.changed, "Changed since the last sitting: ")
        .lines();
}

Lines build_lines(const Recipe& recipe) {
    Lines lines;
    for (const Step& step : recipe.build) {
        lines.push_back(std::to_string(lines.size() + 1) + ". " + step_text(step));
    }
    return lines;
}

std::string drawing_text(const HeadDrawing& plan) {
    JoinedWords words;
    const auto count = [&](StrokeKind kind, const std::string& one, const std::string& many) {
        const auto number =
            std::count_if(plan.strokes.begin(), plan.strokes.end(),
                          [&](const Stroke& stroke) { return stroke.kind == kind; });
        if (number > 0) words.add(std::to_string(number) + (number == 1 ? one : many));
    };
    count(StrokeKind::parting, " parting drawn", " partings drawn");
    count(StrokeKind::section, " section drawn", " sections drawn");
    return words.text();
}

std::string mark_text(const PlanMark& mark) {
    return JoinedWords(": ").add("Mark " + std::to_string(mark.number)).add(mark.words).text();
}

Lines plan_lines(const HeadDrawing& plan) {
    return PartLines{}.add(drawing_text(plan)).each(plan.marks, mark_text).lines();
}

Lines finish_lines(const Recipe& recipe) {
    const FinishDetails& finish = recipe.finish_details;
    return PartLines{}
        .add(recipe.finish)
        .add(finish.spray ? "Spray: " + std::string(word(*finish.spray)) + " hold" : "")
        .add(finish.smoothing, "Smoothing: ")
        .add(finish.shine, "Shine: ")
        .lines();
}

Lines second_look_lines(const std::optional<SecondLook>& second) {
    if (!second) return {};
    Lines lines = PartLines{}
                      .add(second->from, "From: ")
                      .add(second->taken_out, "Taken out: ")
                      .add(second->stays, "Stays: ")
                      .add(second->done_by, "Done by: ")
                      .add(second->at, "At: ")
                      .lines();
    int number = 0;
    for (const std::string& step : second->steps) {
        lines.push_back(std::to_string(++number) + ". " + step);
    }
    return lines;
}

std::string yes_text(const FeedbackDetails& feedback) {
    return JoinedWords{}
        .add(feedback.yes_on ? iso_text(*feedback.yes_on) : "")
        .add(feedback.yes_how)
        .text();
}

Lines feedback_lines(const Recipe& recipe) {
    const FeedbackDetails& feedback = recipe.feedback_details;
    return PartLines{}
        .add(recipe.feedback)
        .add(feedback.front, "Front: ")
        .add(feedback.to_change, "To change: ")
        .add(yes_text(feedback), "Her yes: ")
        .add(feedback.seen_in ? std::string(word(*feedback.seen_in)) : "", "Judged in: ")
        .lines();
}

Lines time_lines(const Recipe& recipe) {
    return PartLines{}
        .add(JoinedWords{}
                 .add(recipe.hands_on_minutes, "", " min hands-on")
                 .add(recipe.waiting_minutes, "", " min waiting")
                 .text())
        .lines();
}

std::vector<RecipePart> parts_even_if_empty(const Recipe& recipe) {
    return {
        {"Cautions", caution_lines(recipe)},
        {"Hair on the day", hair_lines(recipe)},
        {"Prep", PartLines{}.each(recipe.prep, product_text).lines()},
        {"Heat protection", PartLines{}.add(recipe.heat_protection).lines()},
        {"Drying", PartLines{}.add(recipe.drying).lines()},
        {"Heat tool",
         PartLines{}.add(recipe.heat_tool ? heat_tool_text(*recipe.heat_tool) : "").lines()},
        {"Winding", PartLines{}.add(winding_text(recipe.winding)).lines()},
        {"Setting", PartLines{}.add(setting_text(recipe.setting)).lines()},
        {"Sections", PartLines{}.add(recipe.sections).each(recipe.panels).lines()},
        {"Parting", PartLines{}.add(recipe.parting).add(parting_text(recipe.parting_line)).lines()},
        {"Head plan", plan_lines(recipe.head_plan)},
        {"Build", build_lines(recipe)},
        {"Padding and pieces", PartLines{}.each(recipe.pieces, piece_text).lines()},
        {"Accessory", PartLines{}.add(recipe.accessory).lines()},
        {"Finish", finish_lines(recipe)},
        {"Second look", second_look_lines(recipe.second_look)},
        {"Feedback", feedback_lines(recipe)},
        {"Time", time_lines(recipe)}};
}

}  // namespace

Lines caution_lines(const Recipe& recipe) {
    const CautionDetails& details = recipe.caution_details;
    return PartLines{}
        .add(recipe.cautions)
        .each(details.sensitivities, sensitivity_text)
        .add(details.scalp, "Scalp: ")
        .add(details.tender, "Tender: ")
        .lines();
}

std::vector<RecipePart> recipe_parts(const Recipe& recipe) {
    std::vector<RecipePart> parts = parts_even_if_empty(recipe);
    std::erase_if(parts, [](const RecipePart& part) { return part.lines.empty(); });
    return parts;
}

std::vector<std::string> recipe_headings() {
    std::vector<std::string> headings;
    for (const RecipePart& part : parts_even_if_empty({})) headings.push_back(part.heading);
    return headings;
}

}  // namespace quarterturn
