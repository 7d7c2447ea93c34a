#include "indexer/looks/own_words.h"

#include "indexer/record/word_list.h"
#include "indexer/store/many_looks.h"
#include "indexer/store/text.h"

namespace quarterturn {
namespace {

constexpr WordList<WordsFor, 8> names{{{WordsFor::product, "product"},
                                       {WordsFor::amount, "amount"},
                                       {WordsFor::place, "place"},
                                       {WordsFor::tool, "tool"},
                                       {WordsFor::pins, "pins"},
                                       {WordsFor::colour, "colour"},
                                       {WordsFor::piece, "piece"},
                                       {WordsFor::step, "step"}}};

// 0: begins so; 1: a later word of it does; nothing: neither.
std::optional<int> rank(std::string_view key, std::string_view begun) {
    if (key.starts_with(begun)) return 0;
    for (auto at = key.find(' '); at != std::string_view::npos; at = key.find(' ', at + 1)) {
        if (key.substr(at + 1).starts_with(begun)) return 1;
    }
    return std::nullopt;
}

}  // namespace

std::string_view word(WordsFor what) {
    return find_word(names, what);
}

std::optional<WordsFor> parse_words_for(std::string_view text) {
    return find_value(names, text);
}

OwnWords::OwnWords(Library& library) {
    std::vector<LookId> looks;
    for (const Look& look : library.looks().all()) looks.push_back(look.id);
    for (const auto& [look, recipe] : ManyLooks(library.database(), looks).recipes()) {
        add_recipe(recipe);
    }
    for (const RecipeTemplate& each : library.recipe_templates().all()) add_recipe(each.recipe);
}

void OwnWords::add(WordsFor what, const std::string& text) {
    if (text.empty()) return;
    Used& used = used_[what][folded(text)];
    used.text = text;
    ++used.times;
}

void OwnWords::add_product(const Product& product) {
    add(WordsFor::product, product.name);
    add(WordsFor::amount, product.amount);
    add(WordsFor::place, product.where);
}

void OwnWords::add_step(const Step& step) {
    add(WordsFor::step, step.words);
    if (step.heat_tool) add(WordsFor::tool, step.heat_tool->kind);
    if (step.backcombing) add(WordsFor::place, step.backcombing->where);
    for (const Product& product : step.products) add_product(product);
    for (const Pins& pins : step.pins) {
        add(WordsFor::pins, pins.kind);
        add(WordsFor::colour, pins.colour);
    }
}

void OwnWords::add_recipe(const Recipe& recipe) {
    for (const Product& product : recipe.prep) add_product(product);
    if (recipe.heat_tool) add(WordsFor::tool, recipe.heat_tool->kind);
    for (const Step& step : recipe.build) add_step(step);
    for (const Piece& piece : recipe.pieces) {
        add(WordsFor::piece, piece.what);
        add(WordsFor::colour, piece.colour);
        add(WordsFor::place, piece.where);
    }
}

std::vector<std::string> OwnWords::beginning(WordsFor what, std::string_view begun,
                                             std::size_t most) const {
    struct Found {
        int rank = 0;
        const Used* used = nullptr;
    };
    std::vector<Found> found;
    const std::string key = folded(begun);
    const auto words = used_.find(what);
    if (words == used_.end()) return {};
    for (const auto& [folded_text, used] : words->second) {
        if (const auto place = rank(folded_text, key)) found.push_back({*place, &used});
    }
    std::sort(found.begin(), found.end(), [](const Found& left, const Found& right) {
        if (left.rank != right.rank) return left.rank < right.rank;
        if (left.used->times != right.used->times) return left.used->times > right.used->times;
        return name_before(left.used->text, right.used->text);
    });
    std::vector<std::string> texts;
    for (const Found& each : found) {
        if (texts.size() < most) texts.push_back(each.used->text);
    }
    return texts;
}

}  // namespace quarterturn
