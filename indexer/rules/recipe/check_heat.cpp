#include <algorithm>
#include <cmath>

#include "indexer/rules/heat_and_spray.h"
#include "indexer/rules/recipe/check_parts.h"
#include "indexer/rules/recipe/plain_words.h"

namespace quarterturn {
namespace {

// Above this, common practice asks for a second thought.
constexpr int hot_celsius = 200;
// Common practice: curls cool 10 to 15 minutes before they are opened.
constexpr int least_cooling_minutes = 10;
// Common practice: a pinned set may be left an hour or two while others are done.
constexpr int longest_left_minutes = 120;

bool says_curls(std::string_view words) {
    return says_any(words, {"curl", "ringlet"}) && !says_any(words, {"natural curl"});
}

bool makes_curls(const Recipe& recipe) {
    return std::any_of(recipe.build.begin(), recipe.build.end(),
                       [](const Step& step) { return says_curls(step.words); });
}

bool has_no_barrel(const HeatTool& tool) {
    return says_any(tool.kind, {"straight", "flat", "plate", "dryer", "diffus", "crimp", "comb"});
}

std::vector<HeatTool> tools_of(const Recipe& recipe) {
    std::vector<HeatTool> tools;
    if (recipe.heat_tool) tools.push_back(*recipe.heat_tool);
    for (const Step& step : recipe.build) {
        if (step.heat_tool) tools.push_back(*step.heat_tool);
    }
    return tools;
}

bool has_size(const HeatTool& tool) {
    return tool.barrel_mm.value_or(0) > 0 || says_size(tool.kind, "mm");
}

bool barrel_size_stated(const Recipe& recipe) {
    const auto tools = tools_of(recipe);
    return std::any_of(tools.begin(), tools.end(), has_size) ||
           std::any_of(recipe.build.begin(), recipe.build.end(), [](const Step& step) {
               return says_size(step.words, "mm") || says_size(step.setting.how, "mm");
           });
}

void check_tool(const Recipe& recipe, const AddFinding& add) {
    const auto tools = tools_of(recipe);
    if (tools.empty()) {
        const auto hot = std::find_if(recipe.build.begin(), recipe.build.end(), uses_heat);
        if (hot == recipe.build.end()) return;
        add(RecipeRule::heat_tool,
            "Step " + std::to_string(hot - recipe.build.begin() + 1) +
                " uses heat, but no heat tool is described: write which, how hot and how wide.");
        return;
    }
    for (const HeatTool& tool : tools) {
        if (!blank(tool.kind) && (tool.temperature_c || tool.temperature_f)) continue;
        add(RecipeRule::heat_tool,
            (blank(tool.kind) ? std::string("A heat tool is not named")
                              : "The temperature of the " + tool.kind + " is missing") +
                ": the same heat makes the same hold.");
        return;
    }
}

bool protects(const Product& product) {
    return says_any(product.name, {"heat protect", "protection spray", "thermal"});
}

bool protected_in_prep(const Recipe& recipe) {
    return !blank(recipe.heat_protection) ||
           std::any_of(recipe.prep.begin(), recipe.prep.end(), protects);
}

// Heat that belongs to no step comes before the first one.
bool heat_before_protection(const Recipe& recipe) {
    if (protected_in_prep(recipe)) return false;
    const auto hot = std::find_if(recipe.build.begin(), recipe.build.end(), uses_heat);
    if (hot == recipe.build.end()) return recipe.heat_tool.has_value();
    return std::none_of(recipe.build.begin(), hot + 1, [](const Step& step) {
        return std::any_of(step.products.begin(), step.products.end(), protects);
    });
}

void check_protection(const Recipe& recipe, const AddFinding& add) {
    if (!heat_before_protection(recipe)) return;
    add(RecipeRule::heat_protection,
        "A heat tool is used, but no heat protection is named before it: heat dries and breaks "
        "hair. Follow the labels of the tool and the product.");
}

void check_barrel(const Recipe& recipe, const AddFinding& add) {
    const auto tools = tools_of(recipe);
    if (barrel_size_stated(recipe)) return;
    if (std::any_of(tools.begin(), tools.end(), has_no_barrel)) return;
    if (makes_curls(recipe)) {
        add(RecipeRule::curl_size,
            "Curls are made, but the size of the barrel or roller is missing: another size makes "
            "another curl.");
    } else if (!tools.empty()) {
        add(RecipeRule::barrel,
            "The heat tool has no barrel size: without it the same bend is hard to make again.");
    }
}

bool section_size_in(std::string_view words) {
    return says_any(words, {"section", "piece"}) &&
           (says_any(words, {"finger", "pencil", "thumb"}) || says_size(words, "cm") ||
            says_size(words, "mm"));
}

bool section_size_stated(const Recipe& recipe) {
    return recipe.winding.section_mm || section_size_in(recipe.sections) ||
           std::any_of(recipe.build.begin(), recipe.build.end(), [](const Step& step) {
               return step.winding.section_mm || section_size_in(step.words);
           });
}

void check_section_size(const Recipe& recipe, const AddFinding& add) {
    if (!makes_curls(recipe) || section_size_stated(recipe)) return;
    add(RecipeRule::section_size,
        "Curls are made, but not said in sections of which size: a wider section makes a softer "
        "curl on the same barrel.");
}

int celsius(const HeatTool& tool) {
    if (tool.temperature_c) return *tool.temperature_c;
    return static_cast<int>(
        std::lround((static_cast<double>(tool.temperature_f.value_or(32)) - 32) / 1.8));
}

void check_temperature(const Recipe& recipe, const AddFinding& add) {
    for (const HeatTool& tool : tools_of(recipe)) {
        if (celsius(tool) <= hot_celsius) continue;
        add(RecipeRule::temperature,
            "The heat tool stands at " + std::to_string(celsius(tool)) + " \u00b0C: over " +
                std::to_string(hot_celsius) +
                " \u00b0C can hurt hair and skin. Follow the labels of the tool and the product.");
    }
}

void check_one_setting(const Setting& setting, const AddFinding& add) {
    if (setting.cooling_minutes.value_or(least_cooling_minutes) < least_cooling_minutes) {
        add(RecipeRule::setting, "The set cools only " + std::to_string(*setting.cooling_minutes) +
                                     " minutes: curls that are opened before 10 to 15 minutes "
                                     "drop.");
    }
    if (setting.may_be_left_minutes.value_or(0) > longest_left_minutes) {
        add(RecipeRule::setting, "The set is left " + std::to_string(*setting.may_be_left_minutes) +
                                     " minutes: an hour or two is what a pinned set is usually "
                                     "left.");
    }
}

}  // namespace

void check_heat(const Recipe& recipe, const AddFinding& add) {
    check_tool(recipe, add);
    check_protection(recipe, add);
    check_barrel(recipe, add);
    check_section_size(recipe, add);
    check_temperature(recipe, add);
}

void check_setting(const Recipe& recipe, const AddFinding& add) {
    check_one_setting(recipe.setting, add);
    for (const Step& step : recipe.build) check_one_setting(step.setting, add);
}

}  // namespace quarterturn
