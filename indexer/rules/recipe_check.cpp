#include "indexer/rules/recipe_check.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <string_view>

namespace quarterturn {
namespace {

using Findings = std::vector<RecipeFinding>;

// Above this, common practice asks for a second thought.
constexpr int hot_celsius = 200;

bool blank(std::string_view text) {
    return text.find_first_not_of(" \t\r\n") == std::string_view::npos;
}

std::string lower(std::string_view text) {
    std::string result(text);
    for (char& c : result) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return result;
}

template <std::size_t N>
bool says_any(std::string_view text, const std::array<std::string_view, N>& sought) {
    const std::string plain = lower(text);
    return std::any_of(sought.begin(), sought.end(), [&](std::string_view word) {
        return plain.find(word) != std::string::npos;
    });
}

void warn(Findings& findings, std::string sentence) {
    findings.push_back({Weight::warning, std::move(sentence)});
}

void bar(Findings& findings, std::string sentence) {
    findings.push_back({Weight::bars_sign_off, std::move(sentence)});
}

bool known_to_be_none(std::string_view cautions) {
    constexpr std::array<std::string_view, 3> none{"none", "no known", "nothing known"};
    return std::any_of(none.begin(), none.end(),
                       [&](std::string_view start) { return lower(cautions).starts_with(start); });
}

void check_cautions(const Recipe& recipe, Findings& findings) {
    constexpr std::array<std::string_view, 1> patch_test{"patch"};
    if (blank(recipe.cautions)) {
        warn(findings,
             "Nothing is said of allergies or tender spots: ask her, and write \"none known\" when "
             "there are none.");
    } else if (!known_to_be_none(recipe.cautions) && !says_any(recipe.cautions, patch_test)) {
        warn(findings,
             "There are cautions, but no word of a patch test: write when it was done and what "
             "came of it, and follow each product's label.");
    }
}

void check_prep(const Recipe& recipe, Findings& findings) {
    const bool any = std::any_of(recipe.prep.begin(), recipe.prep.end(),
                                 [](const Product& product) { return !blank(product.name); });
    if (any) return;
    bar(findings,
        "No prep product is named: without the same prep the hair will not hold the same way. "
        "Write "
        "\"none\" when none was used.");
}

void check_heat_protection(const Recipe& recipe, Findings& findings) {
    if (!recipe.heat_tool || !blank(recipe.heat_protection)) return;
    warn(findings,
         "A heat tool is used, but no heat protection is named: heat dries and breaks hair. Follow "
         "the labels of the tool and the product.");
}

bool makes_curls(const Recipe& recipe) {
    constexpr std::array<std::string_view, 2> curls{"curl", "ringlet"};
    constexpr std::array<std::string_view, 1> her_own{"natural curl"};
    return std::any_of(recipe.build.begin(), recipe.build.end(), [&](const Step& step) {
        return says_any(step.words, curls) && !says_any(step.words, her_own);
    });
}

// "curl away from the face, 25 mm": the size may stand in the words of a step.
bool size_in_words(std::string_view text) {
    const std::string plain = lower(text);
    for (auto at = plain.find("mm"); at != std::string::npos; at = plain.find("mm", at + 1)) {
        const auto before = plain.substr(0, at).find_last_not_of(' ');
        if (before != std::string::npos && plain[before] >= '0' && plain[before] <= '9')
            return true;
    }
    return false;
}

bool barrel_size_stated(const Recipe& recipe) {
    if (recipe.heat_tool && recipe.heat_tool->barrel_mm.value_or(0) > 0) return true;
    if (recipe.heat_tool && size_in_words(recipe.heat_tool->kind)) return true;
    return std::any_of(recipe.build.begin(), recipe.build.end(),
                       [](const Step& step) { return size_in_words(step.words); });
}

bool has_no_barrel(const HeatTool& tool) {
    constexpr std::array<std::string_view, 6> without{"straight", "flat",  "plate",
                                                      "dryer",    "crimp", "comb"};
    return says_any(tool.kind, without);
}

void check_barrel(const Recipe& recipe, Findings& findings) {
    if (barrel_size_stated(recipe)) return;
    if (recipe.heat_tool && has_no_barrel(*recipe.heat_tool)) return;
    if (makes_curls(recipe)) {
        bar(findings,
            "Curls are made, but the size of the barrel or roller is missing: another size makes "
            "another curl.");
    } else if (recipe.heat_tool) {
        warn(findings,
             "The heat tool has no barrel size: without it the same bend is hard to make again.");
    }
}

void check_temperature(const Recipe& recipe, Findings& findings) {
    const int celsius = recipe.heat_tool ? recipe.heat_tool->temperature_c.value_or(0) : 0;
    if (celsius <= hot_celsius) return;
    warn(findings, "The heat tool stands at " + std::to_string(celsius) + " \u00b0C: over " +
                       std::to_string(hot_celsius) +
                       " \u00b0C can hurt hair and skin. Follow the labels of the tool and the "
                       "product.");
}

void check_sections(const Recipe& recipe, Findings& findings) {
    if (blank(recipe.sections)) {
        warn(findings,
             "The sections are not written down: they decide where the weight of the style sits.");
    }
    if (blank(recipe.parting)) {
        bar(findings,
            "The parting is not written down: another parting makes another look. Write \"none\" "
            "when there is none.");
    }
}

void check_build(const Recipe& recipe, Findings& findings) {
    const bool any = std::any_of(recipe.build.begin(), recipe.build.end(),
                                 [](const Step& step) { return !blank(step.words); });
    if (any) return;
    bar(findings, "No step of the build is written down: nobody could make the look from this.");
}

void check_pins(const Recipe& recipe, Findings& findings) {
    for (std::size_t i = 0; i < recipe.build.size(); ++i) {
        for (const Pins& pins : recipe.build[i].pins) {
            if (pins.count.value_or(0) > 0) continue;
            const std::string kind = blank(pins.kind) ? "pins" : pins.kind;
            bar(findings, "Step " + std::to_string(i + 1) + " does not say how many " + kind +
                              ": too few will not hold, and all of them must come out again.");
        }
    }
}

void check_accessory(const Recipe& recipe, Findings& findings) {
    if (!blank(recipe.accessory)) return;
    bar(findings, "The accessory is not described: write which and where it sits, or \"none\".");
}

void check_feedback(const Recipe& recipe, Findings& findings) {
    if (!blank(recipe.feedback)) return;
    bar(findings, "The client's own words are missing: a look is only complete with her yes.");
}

bool every_step_timed(const Recipe& recipe) {
    return !recipe.build.empty() &&
           std::all_of(recipe.build.begin(), recipe.build.end(),
                       [](const Step& step) { return step.minutes.value_or(0) > 0; });
}

int minutes_of_steps(const Recipe& recipe) {
    return std::accumulate(
        recipe.build.begin(), recipe.build.end(), 0,
        [](int sum, const Step& step) { return sum + std::max(0, step.minutes.value_or(0)); });
}

void check_minutes(const Recipe& recipe, Findings& findings) {
    const int hands_on = recipe.hands_on_minutes.value_or(0);
    if (hands_on <= 0 && !every_step_timed(recipe)) {
        bar(findings,
            "The hands-on minutes are missing: the wedding morning is planned from them.");
    } else if (hands_on > 0 && minutes_of_steps(recipe) > hands_on) {
        warn(findings, "The steps take " + std::to_string(minutes_of_steps(recipe)) +
                           " minutes together, but the hands-on time says " +
                           std::to_string(hands_on) + ".");
    }
}

}  // namespace

Findings check_recipe(const Recipe& recipe) {
    Findings findings;
    for (const auto check : {check_cautions, check_prep, check_heat_protection, check_barrel,
                             check_temperature, check_sections, check_build, check_pins,
                             check_accessory, check_feedback, check_minutes}) {
        check(recipe, findings);
    }
    return findings;
}

RecipeFinding no_recipe_finding() {
    return {Weight::bars_sign_off,
            "No recipe is written down yet: without it the look cannot be made again."};
}

}  // namespace quarterturn
