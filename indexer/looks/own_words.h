#pragma once
// Her own earlier words, to complete what she begins to write.

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

enum class WordsFor { product, amount, place, tool, pins, colour, piece, step };

inline constexpr std::array all_words_for{WordsFor::product, WordsFor::amount, WordsFor::place,
                                          WordsFor::tool,    WordsFor::pins,   WordsFor::colour,
                                          WordsFor::piece,   WordsFor::step};

std::string_view word(WordsFor what);
std::optional<WordsFor> parse_words_for(std::string_view text);

// The words of all recipes and templates of a library as they are when it is made. Throws
// StoreError.
class OwnWords {
  public:
    explicit OwnWords(Library& library);

    // Those that begin so, and after them those of which another word does, case aside, in any
    // script; the most used first, then by name.
    std::vector<std::string> beginning(WordsFor what, std::string_view begun,
                                       std::size_t most = 12) const;

  private:
    struct Used {
        std::string text;  // as she wrote it last
        int times = 0;
    };
    void add(WordsFor what, const std::string& text);
    void add_recipe(const Recipe& recipe);
    void add_step(const Step& step);
    void add_product(const Product& product);

    std::map<WordsFor, std::map<std::string, Used>> used_;  // by what two spellings have in common
};

}  // namespace quarterturn
