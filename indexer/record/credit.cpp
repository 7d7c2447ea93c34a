#include "indexer/record/credit.h"

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

constexpr WordList<Whose, 3> whose_words{{{Whose::own, "own"},
                                          {Whose::photographer, "photographer"},
                                          {Whose::somebody_else, "somebody else"}}};

}  // namespace

std::string_view word(Whose whose) {
    return find_word(whose_words, whose);
}

std::optional<Whose> parse_whose(std::string_view text) {
    return find_value(whose_words, text);
}

}  // namespace quarterturn
