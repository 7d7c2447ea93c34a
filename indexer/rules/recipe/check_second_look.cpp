#include <algorithm>

#include "indexer/rules/recipe/check_parts.h"
#include "indexer/rules/recipe/plain_words.h"

namespace quarterturn {
namespace {

bool any_step(const Recipe& recipe, bool (*holds)(const Step&)) {
    return std::any_of(recipe.build.begin(), recipe.build.end(), holds);
}

bool backcombs(const Step& step) {
    return step.backcombing ||
           (says_any(step.words, {"backcomb", "back-comb", "back comb", "tease"}) &&
            !says_any(step.words,
                      {"no backcomb", "without backcomb", "not backcomb", "nothing is backcomb"}));
}

bool texturises(const Product& product) {
    return says_any(product.name, {"textur", "powder", "salt", "grit"});
}

bool texturises_in_step(const Step& step) {
    return std::any_of(step.products.begin(), step.products.end(), texturises);
}

bool strong_spray(const Recipe& recipe) {
    if (recipe.finish_details.spray) return *recipe.finish_details.spray == Hold::strong;
    return says_any(recipe.finish, {"strong hold", "strong-hold", "firm hold", "extra hold"});
}

bool elastic_under_padding(const Recipe& recipe) {
    const auto has = [&](PieceKind kind, std::string_view word) {
        return std::any_of(recipe.pieces.begin(), recipe.pieces.end(), [&](const Piece& piece) {
            return piece.kind == kind && says_any(piece.what + ' ' + piece.where, {word});
        });
    };
    if (has(PieceKind::band, "elastic") && has(PieceKind::band, "under")) return true;
    return any_step(recipe, [](const Step& step) {
        return says_any(step.words, {"elastic under the pad", "elastic underneath the pad"});
    });
}

}  // namespace

void check_second_look(const Recipe& recipe, const Recipe* first_look, const AddFinding& add) {
    if (!recipe.second_look) return;
    const bool own = blank(recipe.second_look->from);
    if (!own && first_look == nullptr) return;
    const Recipe& first = own ? recipe : *first_look;
    const std::string start = "The hair is let down later, and the first look ";
    const auto find = [&](const std::string& what) {
        add(RecipeRule::comes_down_again, start + what);
    };
    if (any_step(first, backcombs)) {
        find("is backcombed: it has to be brushed out first, and the curl goes with it.");
    }
    if (std::any_of(first.prep.begin(), first.prep.end(), texturises) ||
        any_step(first, texturises_in_step)) {
        find("uses a texturising product: the lengths will stay rough.");
    }
    if (strong_spray(first)) {
        find("is sprayed with strong hold: regular hold brushes out.");
    }
    if (elastic_under_padding(first)) {
        find("has an elastic under the padding: it leaves a ridge in the lengths.");
    }
}

}  // namespace quarterturn
