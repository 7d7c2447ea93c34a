#include "indexer/sheet/sheet_for_others.h"

#include <algorithm>

#include "indexer/sheet/wording.h"
#include "indexer/store/text_words.h"

namespace quarterturn {
namespace {

constexpr const char* line_left_out = "(left out, since it names somebody)";

bool names_somebody(const std::string& text, const std::vector<std::string>& names) {
    return std::ranges::any_of(names,
                               [&](const std::string& name) { return share_a_word(text, name); });
}

Recipe craft_of(const Recipe& recipe) {
    Recipe craft;
    craft.heat_protection = recipe.heat_protection;
    craft.heat_tool = recipe.heat_tool;
    craft.winding = recipe.winding;
    craft.setting = recipe.setting;
    craft.sections = recipe.sections;
    craft.panels = recipe.panels;
    craft.parting = recipe.parting;
    craft.parting_line = recipe.parting_line;
    craft.head_plan = recipe.head_plan;
    craft.build = recipe.build;
    for (Step& step : craft.build) step.photos.clear();
    craft.finish = recipe.finish;
    craft.finish_details = recipe.finish_details;
    craft.hands_on_minutes = recipe.hands_on_minutes;
    craft.waiting_minutes = recipe.waiting_minutes;
    return craft;
}

void leave_names_out(std::vector<std::string>& lines, const std::vector<std::string>& names) {
    for (std::string& line : lines) {
        if (names_somebody(line, names)) line = line_left_out;
    }
}

// Usual caution; nothing of hers.
std::vector<std::string> cautions_for_others(const std::vector<std::string>& of_craft) {
    std::vector<std::string> cautions{
        "Caution: ask about allergies and tender spots before starting."};
    std::ranges::copy_if(of_craft, std::back_inserter(cautions),
                         [](const std::string& line) { return line.starts_with("Heat: "); });
    return cautions;
}

void tell_angle_alone(std::vector<SheetBand>& bands) {
    for (SheetBand& band : bands) {
        for (SheetCell& cell : band.cells) {
            cell.time.clear();
            cell.note.clear();
            if (!cell.empty.empty()) cell.empty = "no photo";
            if (!cell.photo) continue;
            cell.photo->item.described = cell.title;
            cell.photo->item.unnamed = true;
            if (cell.photo->item.mirrored) cell.note = "mirrored, turned";
        }
    }
}

}  // namespace

std::string title_for_others(const Look& look, const std::vector<std::string>& names) {
    Look plain = look;
    if (names_somebody(look.name, names)) plain.name.clear();
    return look_words(plain);
}

SheetRecipe recipe_for_others(const Recipe& recipe, const std::vector<std::string>& names) {
    RecipeRevision revision;
    revision.recipe = craft_of(recipe);
    SheetRecipe sheet = recipe_words(revision);
    sheet.heading = "Recipe";
    sheet.cautions = cautions_for_others(sheet.cautions);
    leave_names_out(sheet.cautions, names);
    for (RecipePart& part : sheet.parts) leave_names_out(part.lines, names);
    if (sheet.drawing) leave_names_out(sheet.drawing->lines, names);
    return sheet;
}

SheetContent content_for_others(SheetContent content, const std::string& title,
                                std::optional<SheetRecipe> recipe) {
    content.title = title;
    content.header = {};
    content.header.client = title;
    content.header.again = title;
    tell_angle_alone(content.bands);
    tell_angle_alone(content.more);
    content.recipe = std::move(recipe);
    return content;
}

}  // namespace quarterturn
