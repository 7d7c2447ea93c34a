#include "indexer/rules/shorthand/readers.h"

namespace quarterturn::shorthand {
namespace {

bool where_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(
        at, {"roots", "root",       "lengths",  "length", "mid-lengths", "midlengths", "ends",
             "crown", "nape",       "hairline", "top",    "front",       "back",       "sides",
             "side",  "underneath", "fringe",   "bun",    "tail",        "ponytail",   "behind"});
}

bool joins_place(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"at", "the", "to", "in", "into", "on", "onto", "through", "around", "of",
                          "and", "over", "from", "her"});
}

// "at the crown and nape": where the place ends that is named from `from` on, or `from`.
std::size_t place_end(const Phrase& phrase, std::size_t from, std::string& where) {
    std::size_t begin = from;
    while (joins_place(phrase, begin)) ++begin;
    std::size_t end = from;
    std::size_t at = begin;
    if (phrase.is(at, {"damp", "dry", "left", "right", "wet"})) ++at;
    while (where_at(phrase, at) || (end > from && joins_place(phrase, at))) {
        if (where_at(phrase, at)) end = at + 1;
        ++at;
    }
    if (end > from) where = phrase.words(begin, end);
    return end;
}

bool measure_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(
        at, {"pump",    "pumps",   "walnut", "walnuts", "pea",  "peas",    "spritz", "spritzes",
             "drop",    "drops",   "pinch",  "pinches", "coin", "puff",    "puffs",  "squirt",
             "squirts", "handful", "egg",    "blob",    "ml",   "strokes", "passes"});
}

// "two pumps of", "half a pea", "a walnut".
std::size_t amount_end(const Phrase& phrase, std::size_t from, std::string& amount) {
    std::size_t at = from;
    if (phrase.is(at, {"half"})) ++at;
    if (phrase.is(at, {"a", "an"}) || phrase.number(at)) ++at;  // "walnut of" will do
    if (!measure_at(phrase, at)) return from;
    amount = phrase.words(from, ++at);
    return phrase.is(at, {"of"}) ? at + 1 : at;
}

bool product_kind_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(
        at,
        {"light",    "strong",     "regular", "firm",        "soft",   "root",       "heat",
         "shine",    "setting",    "texture", "texturising", "volume", "volumising", "smoothing",
         "salt",     "dry",        "hold",    "protection",  "curl",   "styling",    "thickening",
         "blow-dry", "anti-frizz", "lift",    "protecting",  "matt",   "flexible"});
}

bool product_noun_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(
        at, {"mousse", "foam", "lotion", "hairspray", "spray", "serum", "oil", "cream", "wax",
             "pomade", "powder", "gel", "shampoo", "balm", "paste", "milk", "mist"});
}

std::size_t name_end(const Phrase& phrase, std::size_t from, bool bare) {
    std::size_t at = from;
    while (product_kind_at(phrase, at)) ++at;
    if (!product_noun_at(phrase, at)) return from;
    // "spray" alone is something one does.
    const bool verb_too = phrase.is(at, {"spray", "mist", "powder", "oil", "wax", "gel"});
    return bare && at == from && verb_too ? from : at + 1;
}

std::size_t read_product(const Phrase& phrase, std::size_t from, Product& product) {
    const std::size_t begin = amount_end(phrase, from, product.amount);
    std::size_t end = name_end(phrase, begin, begin == from);
    if (end == begin) return from;
    product.name = phrase.words(begin, end);
    if (product.amount.empty()) {
        const std::size_t amount = amount_end(phrase, end, product.amount);
        end = amount;
    }
    return place_end(phrase, end, product.where);
}

bool backcombs_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(at, {"backcomb", "backcombed", "backcombing", "tease", "teased", "teasing"});
}

bool how_much_at(const Phrase& phrase, std::size_t at) {
    return phrase.is(
        at, {"light", "lightly", "medium", "heavy", "heavily", "firm", "firmly", "gentle", "gently",
             "soft", "softly", "strong", "little", "well", "slight", "slightly", "hard"});
}

void add_words(std::string& text, const std::string& words) {
    text += (text.empty() ? "" : " ") + words;
}

bool says_not(const Phrase& phrase, std::size_t at) {
    return at > 0 && phrase.is(at - 1, {"no", "not", "without", "don't", "never"});
}

void read_one_backcombing(Phrase& phrase, Step& step, std::size_t at) {
    Backcombing backcombing;
    std::size_t begin = at;
    if (begin > 0 && how_much_at(phrase, begin - 1)) {
        backcombing.amount = phrase[--begin].plain;
        if (begin > 0 && phrase.is(begin - 1, {"a"})) --begin;
    }
    std::size_t end = at + 1;
    while (true) {
        const std::size_t a = phrase.is(end, {"a"}) ? 1 : 0;
        std::string where;
        if (how_much_at(phrase, end + a)) {
            add_words(backcombing.amount, phrase[end + a].plain);
            end += a + 1;
        } else if (const std::size_t place = place_end(phrase, end, where); place != end) {
            add_words(backcombing.where, where);
            end = place;
        } else {
            break;
        }
    }
    phrase.use(begin, end);
    step.backcombing = backcombing;
}

}  // namespace

void read_products(Phrase& phrase, Step& step) {
    for (std::size_t at = 0; at < phrase.size(); ++at) {
        Product product;
        const std::size_t end = read_product(phrase, at, product);
        if (end == at) continue;
        phrase.use(at, end);
        step.products.push_back(product);
    }
}

void read_backcombing(Phrase& phrase, Step& step) {
    for (std::size_t at = 0; at < phrase.size(); ++at) {
        if (!backcombs_at(phrase, at) || says_not(phrase, at) || step.backcombing) continue;
        read_one_backcombing(phrase, step, at);
    }
}

}  // namespace quarterturn::shorthand
