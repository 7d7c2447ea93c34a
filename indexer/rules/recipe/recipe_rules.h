#pragma once
// The rules of the recipe check by name, and what each weighs. She may weigh them otherwise.

#include <map>
#include <optional>
#include <string_view>
#include <vector>

namespace quarterturn {

enum class Weight { warning, bars_sign_off };

enum class RecipeRule {
    cautions,
    patch_test,
    prep,
    heat_tool,
    heat_protection,
    curl_size,
    barrel,
    section_size,
    temperature,
    setting,
    sections,
    parting,
    build,
    crimping,
    pins,
    accessory,
    comes_down_again,
    clients_words,
    clients_yes,
    mirror,
    minutes,
    sum_of_minutes
};

// In the order of the recipe's parts.
std::vector<RecipeRule> all_recipe_rules();
std::string_view word(RecipeRule rule);   // "patch test"
std::string_view about(RecipeRule rule);  // what it looks for, as half a sentence
Weight usual_weight(RecipeRule rule);
std::optional<RecipeRule> parse_recipe_rule(std::string_view text);

struct RecipeRules {
    std::map<RecipeRule, std::optional<Weight>> changed;  // nothing for a rule that is off

    std::optional<Weight> weight(RecipeRule rule) const;

    bool operator==(const RecipeRules&) const = default;
};

}  // namespace quarterturn
