#include "indexer/looks/recipe_findings.h"

namespace quarterturn {

std::optional<Look> first_look_of(Library& library, const Look& look, const Recipe& recipe) {
    if (!recipe.second_look || recipe.second_look->from.empty()) return std::nullopt;
    for (const Look& other : library.looks().named(recipe.second_look->from)) {
        if (other.client == look.client && other.id != look.id) return other;
    }
    return std::nullopt;
}

RecipeJudge::RecipeJudge(Library& library)
    : library_(&library), rules_(read_recipe_rules(library)) {}

std::optional<Recipe> RecipeJudge::first_look(const Look& look, const Recipe& recipe) {
    const auto first = first_look_of(*library_, look, recipe);
    const auto revision = first ? library_->recipes().current(first->id) : std::nullopt;
    return revision ? std::optional{revision->recipe} : std::nullopt;
}

std::vector<RecipeFinding> RecipeJudge::findings(const Look& look,
                                                 const std::optional<Recipe>& recipe) {
    std::vector<RecipeFinding> findings;
    if (recipe) {
        const auto first = first_look(look, *recipe);
        findings = check_recipe(*recipe, rules_.rules, first ? &*first : nullptr);
    } else {
        findings.push_back(no_recipe_finding());
    }
    for (const std::string& problem : rules_.problems) {
        findings.push_back({Weight::warning, problem});
    }
    return findings;
}

}  // namespace quarterturn
