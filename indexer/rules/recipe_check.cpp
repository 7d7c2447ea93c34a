#include "indexer/rules/recipe_check.h"

#include <algorithm>
#include <numeric>

#include "indexer/rules/recipe/check_parts.h"
#include "indexer/rules/recipe/plain_words.h"

namespace quarterturn {
namespace {

bool known_to_be_none(std::string_view cautions) {
    const std::string plain = lower(cautions);
    return plain.starts_with("none") || plain.starts_with("no known") ||
           plain.starts_with("nothing known");
}

bool named(const Product& product) {
    return !blank(product.name);
}

void check_sections(const Recipe& recipe, const AddFinding& add) {
    if (blank(recipe.sections) && recipe.panels.empty() && recipe.head_plan.strokes.empty()) {
        add(RecipeRule::sections,
            "The sections are not written down: they decide where the weight of the style sits.");
    }
    if (blank(recipe.parting) && !recipe.parting_line.side) {
        add(RecipeRule::parting,
            "The parting is not written down: another parting makes another look. Write \"none\" "
            "when there is none.");
    }
}

bool says_something(Step step) {
    step.minutes.reset();
    if (blank(step.words)) step.words.clear();
    return step != Step{};
}

void check_steps(const Recipe& recipe, const AddFinding& add) {
    if (std::any_of(recipe.build.begin(), recipe.build.end(), says_something)) return;
    add(RecipeRule::build,
        "No step of the build is written down: nobody could make the look from this.");
}

std::string step_number(std::size_t index) {
    return "Step " + std::to_string(index + 1);
}

void check_crimping(const Recipe& recipe, const AddFinding& add) {
    for (std::size_t i = 0; i < recipe.build.size(); ++i) {
        const Step& step = recipe.build[i];
        const bool crimps = says_any(step.words, {"crimp"}) ||
                            (step.heat_tool && says_any(step.heat_tool->kind, {"crimp"}));
        if (!crimps || says_any(step.words, {"underneath", "under the", "hidden", "out of sight"}))
            continue;
        add(RecipeRule::crimping,
            step_number(i) +
                " crimps near hair that may be on show: its marks show in person even where a "
                "photo looks fine. Write under which hair it stays hidden.");
    }
}

void check_pins(const Recipe& recipe, const AddFinding& add) {
    for (std::size_t i = 0; i < recipe.build.size(); ++i) {
        for (const Pins& pins : recipe.build[i].pins) {
            if (pins.count.value_or(0) > 0) continue;
            add(RecipeRule::pins, step_number(i) + " does not say how many " +
                                      (blank(pins.kind) ? "pins" : pins.kind) +
                                      ": too few will not hold, and all of them must come out "
                                      "again.");
        }
    }
}

void check_accessory(const Recipe& recipe, const AddFinding& add) {
    const bool described =
        std::any_of(recipe.pieces.begin(), recipe.pieces.end(), [](const Piece& piece) {
            return piece.kind == PieceKind::accessory && !blank(piece.what);
        });
    if (described || !blank(recipe.accessory)) return;
    add(RecipeRule::accessory,
        "The accessory is not described: write which and where it sits, or \"none\".");
}

bool every_step_timed(const Recipe& recipe) {
    return !recipe.build.empty() &&
           std::all_of(recipe.build.begin(), recipe.build.end(),
                       [](const Step& step) { return step.minutes.value_or(0) > 0; });
}

long long minutes_of_steps(const Recipe& recipe) {
    return std::accumulate(recipe.build.begin(), recipe.build.end(), 0LL,
                           [](long long sum, const Step& step) {
                               return sum + std::max(0, step.minutes.value_or(0));
                           });
}

}  // namespace

void check_cautions(const Recipe& recipe, const AddFinding& add) {
    const CautionDetails& details = recipe.caution_details;
    if (blank(recipe.cautions) && details == CautionDetails{}) {
        add(RecipeRule::cautions,
            "Nothing is said of allergies or tender spots: ask her, and write \"none known\" when "
            "there are none.");
        return;
    }
    const bool dated = std::all_of(details.sensitivities.begin(), details.sensitivities.end(),
                                   [](const Sensitivity& each) { return each.patch_tested; });
    const bool told_in_words = blank(recipe.cautions) || known_to_be_none(recipe.cautions) ||
                               says_any(recipe.cautions, {"patch"}) ||
                               !details.sensitivities.empty();
    if (dated && told_in_words) return;
    add(RecipeRule::patch_test,
        "There are cautions, but no patch test is noted: write when it was done and what came of "
        "it, and follow each product's label.");
}

void check_prep(const Recipe& recipe, const AddFinding& add) {
    if (std::any_of(recipe.prep.begin(), recipe.prep.end(), named)) return;
    add(RecipeRule::prep,
        "No prep product is named: without the same prep the hair will not hold the same way. "
        "Write \"none\" when none was used.");
}

void check_build(const Recipe& recipe, const AddFinding& add) {
    check_sections(recipe, add);
    check_steps(recipe, add);
    check_crimping(recipe, add);
    check_pins(recipe, add);
    check_accessory(recipe, add);
}

void check_feedback(const Recipe& recipe, const AddFinding& add) {
    const FeedbackDetails& feedback = recipe.feedback_details;
    const bool yes = feedback.yes_on && !blank(feedback.yes_how);
    if (blank(recipe.feedback) && !yes) {
        add(RecipeRule::clients_words,
            "The client's own words are missing: a look is only complete with her yes.");
    } else if (!yes) {
        add(RecipeRule::clients_yes,
            "It is not said when and how the client gave her yes: write the date, and whether in "
            "the chair or by message.");
    }
    if (feedback.seen_in == SeenIn::photos) {
        add(RecipeRule::mirror,
            "The look was judged on photos only: let her see it in the mirror, from every side.");
    }
}

void check_minutes(const Recipe& recipe, const AddFinding& add) {
    const int hands_on = recipe.hands_on_minutes.value_or(0);
    if (hands_on <= 0 && !every_step_timed(recipe)) {
        add(RecipeRule::minutes,
            "The hands-on minutes are missing: the wedding morning is planned from them.");
    } else if (hands_on > 0 && minutes_of_steps(recipe) > hands_on) {
        add(RecipeRule::sum_of_minutes,
            "The steps take " + std::to_string(minutes_of_steps(recipe)) +
                " minutes together, but the hands-on time says " + std::to_string(hands_on) + ".");
    }
}

std::vector<RecipeFinding> check_recipe(const Recipe& recipe, const RecipeRules& rules,
                                        const Recipe* first_look) {
    std::vector<RecipeFinding> findings;
    const AddFinding add = [&](RecipeRule rule, std::string sentence) {
        const auto weight = rules.weight(rule);
        if (weight) findings.push_back({*weight, std::move(sentence), std::string(word(rule))});
    };
    check_cautions(recipe, add);
    check_prep(recipe, add);
    check_heat(recipe, add);
    check_setting(recipe, add);
    check_build(recipe, add);
    check_second_look(recipe, first_look, add);
    check_feedback(recipe, add);
    check_minutes(recipe, add);
    return findings;
}

RecipeFinding no_recipe_finding() {
    return {Weight::bars_sign_off,
            "No recipe is written down yet: without it the look cannot be made again."};
}

}  // namespace quarterturn
