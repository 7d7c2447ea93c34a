// The recipe in short: every part that says something, in working order.

#include <cmath>

#include "indexer/sheet/join.h"
#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

// "25" and "25.5": no more digits than she gave.
std::string number_words(double value) {
    std::string text = std::to_string(std::round(value * 10) / 10);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return text;
}

std::string product_words(const Product& product) {
    std::string words = product.name;
    add_part(words, ", ", product.amount);
    add_part(words, ", ", product.where);
    return words;
}

std::string tool_words(const HeatTool& tool) {
    std::string words = tool.kind;
    if (tool.barrel_mm) add_part(words, ", ", number_words(*tool.barrel_mm) + " mm");
    if (tool.temperature_c) add_part(words, ", ", std::to_string(*tool.temperature_c) + " °C");
    return words;
}

std::string pin_words(const Pins& pins) {
    std::string words = pins.count ? std::to_string(*pins.count) + " × " + pins.kind : pins.kind;
    add_part(words, ", ", pins.colour);
    if (pins.crossed) add_part(words, ", ", "crossed");
    return words;
}

std::string step_words(const Step& step, std::size_t number) {
    std::string words = std::to_string(number) + ". " + step.words;
    for (const Pins& pins : step.pins) add_part(words, " · ", pin_words(pins));
    if (step.minutes) add_part(words, " · ", std::to_string(*step.minutes) + " min");
    return words;
}

std::string minutes_words(const Recipe& recipe) {
    std::string words;
    if (recipe.hands_on_minutes) {
        add_part(words, ", ", std::to_string(*recipe.hands_on_minutes) + " hands-on");
    }
    if (recipe.waiting_minutes) {
        add_part(words, ", ", std::to_string(*recipe.waiting_minutes) + " waiting");
    }
    return words;
}

std::vector<std::string> prep_words(const Recipe& recipe) {
    std::vector<std::string> words;
    for (const Product& product : recipe.prep) words.push_back(product_words(product));
    return words;
}

std::vector<std::string> heat_words(const Recipe& recipe) {
    std::vector<std::string> words;
    if (recipe.heat_tool) words.push_back(tool_words(*recipe.heat_tool));
    if (!recipe.heat_protection.empty()) words.push_back("Protection: " + recipe.heat_protection);
    return words;
}

std::vector<std::string> build_words(const Recipe& recipe) {
    std::vector<std::string> words;
    for (const Step& step : recipe.build) words.push_back(step_words(step, words.size() + 1));
    return words;
}

// Usual caution; it defers to the labels.
std::vector<std::string> cautions_of(const Recipe& recipe) {
    std::vector<std::string> cautions;
    cautions.push_back(recipe.cautions.empty()
                           ? "Caution: no allergies or tender spots are noted. Ask before starting."
                           : "Caution: " + recipe.cautions);
    if (recipe.heat_tool) {
        cautions.push_back("Heat: " + tool_words(*recipe.heat_tool) +
                           ". Keep to the labels of tool and products; let sprays dry first, many "
                           "can catch fire.");
    }
    return cautions;
}

void add_block(SheetRecipe& sheet, std::string heading, std::vector<std::string> paragraphs) {
    std::erase_if(paragraphs, [](const std::string& words) { return words.empty(); });
    if (!paragraphs.empty()) sheet.blocks.push_back({std::move(heading), std::move(paragraphs)});
}

}  // namespace

SheetRecipe recipe_words(const RecipeRevision& revision) {
    const Recipe& recipe = revision.recipe;
    SheetRecipe sheet;
    sheet.heading = "Recipe, revision " + std::to_string(revision.number);
    sheet.cautions = cautions_of(recipe);
    add_block(sheet, "Hair on the day", {recipe.hair});
    add_block(sheet, "Prep", prep_words(recipe));
    add_block(sheet, "Heat", heat_words(recipe));
    add_block(sheet, "Sections", {recipe.sections});
    add_block(sheet, "Parting", {recipe.parting});
    add_block(sheet, "Build", build_words(recipe));
    add_block(sheet, "Accessory", {recipe.accessory});
    add_block(sheet, "Finish", {recipe.finish});
    add_block(sheet, "Feedback", {recipe.feedback});
    add_block(sheet, "Minutes", {minutes_words(recipe)});
    return sheet;
}

}  // namespace quarterturn
