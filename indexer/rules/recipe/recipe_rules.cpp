#include "indexer/rules/recipe/recipe_rules.h"

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

struct KnownRule {
    RecipeRule rule;
    std::string_view name;
    Weight weight;
    std::string_view about;
};

constexpr Weight warning = Weight::warning;
constexpr Weight bar = Weight::bars_sign_off;

constexpr std::array known_rules{
    KnownRule{RecipeRule::cautions, "cautions", warning, "nothing is said of allergies"},
    KnownRule{RecipeRule::patch_test, "patch test", warning, "a caution has no patch-test date"},
    KnownRule{RecipeRule::prep, "prep", bar, "no prep product is named"},
    KnownRule{RecipeRule::heat_tool, "heat tool", warning,
              "heat is used, but tool or temperature are not stated"},
    KnownRule{RecipeRule::heat_protection, "heat protection", warning,
              "heat comes before any heat protection"},
    KnownRule{RecipeRule::curl_size, "curl size", bar, "curls are made with a barrel of no size"},
    KnownRule{RecipeRule::barrel, "barrel", warning, "a heat tool has no barrel size"},
    KnownRule{RecipeRule::section_size, "section size", warning,
              "curls are made in sections of no size"},
    KnownRule{RecipeRule::temperature, "temperature", warning, "the heat tool is very hot"},
    KnownRule{RecipeRule::setting, "setting", warning,
              "curls cool too briefly, or a set is left too long"},
    KnownRule{RecipeRule::sections, "sections", warning, "the sections are not stated"},
    KnownRule{RecipeRule::parting, "parting", bar, "the parting is not stated"},
    KnownRule{RecipeRule::build, "build", bar, "no step of the build is written down"},
    KnownRule{RecipeRule::crimping, "crimping", warning, "crimping may show"},
    KnownRule{RecipeRule::pins, "pins", bar, "pins have no count"},
    KnownRule{RecipeRule::accessory, "accessory", bar,
              "no accessory, and no word that there is none"},
    KnownRule{RecipeRule::comes_down_again, "comes down again", warning,
              "hair that is let down later is built with what will not come out"},
    KnownRule{RecipeRule::clients_words, "client's words", bar, "nothing the client said"},
    KnownRule{RecipeRule::clients_yes, "client's yes", warning,
              "not said when and how the client gave her yes"},
    KnownRule{RecipeRule::mirror, "mirror", warning, "judged on photos only"},
    KnownRule{RecipeRule::minutes, "minutes", bar, "no hands-on minutes"},
    KnownRule{RecipeRule::sum_of_minutes, "sum of minutes", warning,
              "the steps take longer than the whole"}};

const KnownRule& known(RecipeRule rule) {
    return *std::find_if(known_rules.begin(), known_rules.end(),
                         [&](const KnownRule& each) { return each.rule == rule; });
}

}  // namespace

std::vector<RecipeRule> all_recipe_rules() {
    std::vector<RecipeRule> rules;
    for (const KnownRule& each : known_rules) rules.push_back(each.rule);
    return rules;
}

std::string_view word(RecipeRule rule) {
    return known(rule).name;
}

std::string_view about(RecipeRule rule) {
    return known(rule).about;
}

Weight usual_weight(RecipeRule rule) {
    return known(rule).weight;
}

std::optional<RecipeRule> parse_recipe_rule(std::string_view text) {
    for (const KnownRule& each : known_rules) {
        if (plain_word(each.name) == plain_word(text)) return each.rule;
    }
    return std::nullopt;
}

std::optional<Weight> RecipeRules::weight(RecipeRule rule) const {
    const auto found = changed.find(rule);
    return found == changed.end() ? usual_weight(rule) : found->second;
}

}  // namespace quarterturn
