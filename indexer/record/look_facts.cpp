#include "indexer/record/look_facts.h"

#include "indexer/record/word_list.h"

namespace quarterturn {
namespace {

constexpr WordList<Fact, all_facts.size()> fact_words{{{Fact::length, "length"},
                                                       {Fact::texture, "texture"},
                                                       {Fact::density, "density"},
                                                       {Fact::colour, "colour"},
                                                       {Fact::family, "family"},
                                                       {Fact::parting, "parting"},
                                                       {Fact::accessory, "accessory"},
                                                       {Fact::worn, "worn"},
                                                       {Fact::season, "season"},
                                                       {Fact::year, "year"},
                                                       {Fact::angle, "angle"},
                                                       {Fact::kind, "kind"},
                                                       {Fact::use, "use"}}};

}  // namespace

std::string_view word(Fact fact) {
    return find_word(fact_words, fact);
}

std::optional<Fact> parse_fact(std::string_view text) {
    return find_value(fact_words, text);
}

}  // namespace quarterturn
