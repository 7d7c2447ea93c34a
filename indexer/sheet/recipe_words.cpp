#include "indexer/sheet/wording.h"

namespace quarterturn {
namespace {

// Usual caution; it defers to the labels.
std::vector<std::string> cautions_of(const Recipe& recipe) {
    std::vector<std::string> cautions;
    for (const std::string& line : caution_lines(recipe)) cautions.push_back("Caution: " + line);
    if (cautions.empty()) {
        cautions.emplace_back(
            "Caution: no allergies or tender spots are noted. Ask before starting.");
    }
    if (recipe.heat_tool) {
        cautions.push_back("Heat: " + heat_tool_text(*recipe.heat_tool) +
                           ". Keep to the labels of tool and products; let sprays dry first, many "
                           "can catch fire.");
    }
    return cautions;
}

std::optional<SheetDrawing> drawing_of(const Recipe& recipe) {
    if (recipe.head_plan == HeadDrawing{}) return std::nullopt;
    Recipe only;
    only.head_plan = recipe.head_plan;
    return SheetDrawing{recipe.head_plan, recipe_parts(only).front().lines};
}

}  // namespace

SheetRecipe recipe_words(const RecipeRevision& revision) {
    SheetRecipe sheet;
    sheet.heading = "Recipe, revision " + std::to_string(revision.number);
    sheet.cautions = cautions_of(revision.recipe);
    sheet.drawing = drawing_of(revision.recipe);
    Recipe rest = revision.recipe;  // without what stands among the cautions or is drawn
    rest.head_plan = {};
    rest.cautions.clear();
    rest.caution_details = {};
    rest.heat_tool.reset();
    sheet.parts = recipe_parts(rest);
    return sheet;
}

}  // namespace quarterturn
