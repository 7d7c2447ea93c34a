#include "indexer/rules/heat_and_spray.h"

#include <algorithm>

#include "indexer/record/caution.h"
#include "indexer/rules/recipe/plain_words.h"

namespace quarterturn {
namespace {

bool says_heat(std::string_view words) {
    return says_any(words, {"tong", "iron", "straighten", "hot brush", "heated roller", "wand"});
}

bool says_spray(std::string_view words) {
    return says_any(words, {"spray", "lacquer", "aerosol", "dry shampoo", "mist"}) &&
           !says_any(words, {"no spray", "without spray", "no hairspray", "without hairspray"});
}

bool any_sprayed(const std::vector<Product>& products) {
    return std::ranges::any_of(products,
                               [](const Product& product) { return says_spray(product.name); });
}

std::vector<std::string> cautions(bool heat, bool spray) {
    std::vector<std::string> result;
    if (heat) result.emplace_back(heat_caution);
    if (spray) result.emplace_back(flammable_spray_caution);
    return result;
}

}  // namespace

bool uses_heat(const Step& step) {
    return step.heat_tool || says_heat(step.words);
}

bool uses_spray(const Step& step) {
    return any_sprayed(step.products) || says_spray(step.words);
}

std::vector<std::string> cautions_beside(const Step& step) {
    return cautions(uses_heat(step), uses_spray(step));
}

std::vector<std::string> cautions_beside_prep(const Recipe& recipe) {
    return cautions(recipe.heat_tool || says_heat(recipe.drying),
                    any_sprayed(recipe.prep) || says_spray(recipe.heat_protection));
}

std::vector<std::string> cautions_beside_finish(const Recipe& recipe) {
    const FinishDetails& finish = recipe.finish_details;
    return cautions(says_heat(recipe.finish), finish.spray || says_spray(recipe.finish) ||
                                                  says_spray(finish.shine) ||
                                                  says_spray(finish.smoothing));
}

}  // namespace quarterturn
