#include "indexer/record/recipe_text.h"

#include <cmath>
#include <cstdio>

namespace quarterturn {
namespace {

using Lines = std::vector<std::string>;

void add_words(std::string& text, const std::string& words) {
    if (words.empty()) return;
    if (!text.empty()) text += ", ";
    text += words;
}

std::string millimetres(double size) {
    if (size == std::floor(size)) return std::to_string(static_cast<long long>(size)) + " mm";
    char text[32];
    std::snprintf(text, sizeof text, "%.1f mm", size);
    return text;
}

std::string minutes(int count) {
    return std::to_string(count) + " min";
}

void add_part(std::vector<RecipePart>& parts, const char* heading, const Lines& lines) {
    if (!lines.empty()) parts.push_back({heading, lines});
}

void add_part(std::vector<RecipePart>& parts, const char* heading, const std::string& text) {
    if (!text.empty()) parts.push_back({heading, {text}});
}

Lines prep_lines(const Recipe& recipe) {
    Lines lines;
    for (const Product& product : recipe.prep) lines.push_back(product_text(product));
    return lines;
}

Lines build_lines(const Recipe& recipe) {
    Lines lines;
    for (const Step& step : recipe.build) {
        lines.push_back(std::to_string(lines.size() + 1) + ". " + step_text(step));
    }
    return lines;
}

std::string time_text(const Recipe& recipe) {
    std::string text;
    if (recipe.hands_on_minutes) add_words(text, minutes(*recipe.hands_on_minutes) + " hands-on");
    if (recipe.waiting_minutes) add_words(text, minutes(*recipe.waiting_minutes) + " waiting");
    return text;
}

}  // namespace

std::string product_text(const Product& product) {
    std::string text = product.name;
    add_words(text, product.amount);
    add_words(text, product.where);
    return text;
}

std::string heat_tool_text(const HeatTool& tool) {
    std::string text = tool.kind;
    if (tool.barrel_mm) add_words(text, millimetres(*tool.barrel_mm));
    if (tool.temperature_c) add_words(text, std::to_string(*tool.temperature_c) + " °C");
    return text;
}

std::string pins_text(const Pins& pins) {
    std::string text = pins.count ? std::to_string(*pins.count) + " × " + pins.kind : pins.kind;
    add_words(text, pins.colour);
    if (pins.crossed) add_words(text, "crossed");
    return text;
}

std::string step_text(const Step& step) {
    std::string details;
    const auto add = [&](const std::string& detail) {
        details += (details.empty() ? "" : "; ") + detail;
    };
    for (const Pins& pins : step.pins) add(pins_text(pins));
    if (step.minutes) add(minutes(*step.minutes));
    return details.empty() ? step.words : step.words + " (" + details + ')';
}

std::vector<RecipePart> recipe_parts(const Recipe& recipe) {
    std::vector<RecipePart> parts;
    add_part(parts, "Cautions", recipe.cautions);
    add_part(parts, "Hair on the day", recipe.hair);
    add_part(parts, "Prep", prep_lines(recipe));
    add_part(parts, "Heat protection", recipe.heat_protection);
    if (recipe.heat_tool) add_part(parts, "Heat tool", heat_tool_text(*recipe.heat_tool));
    add_part(parts, "Sections", recipe.sections);
    add_part(parts, "Parting", recipe.parting);
    add_part(parts, "Build", build_lines(recipe));
    add_part(parts, "Accessory", recipe.accessory);
    add_part(parts, "Finish", recipe.finish);
    add_part(parts, "Feedback", recipe.feedback);
    add_part(parts, "Time", time_text(recipe));
    return parts;
}

}  // namespace quarterturn
