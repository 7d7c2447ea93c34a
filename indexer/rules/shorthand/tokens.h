#pragma once
// A line of shorthand cut into phrases (at commas and full stops) and words; "25mm" is two words.

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace quarterturn::shorthand {

struct Token {
    std::string text;              // as written
    std::string plain;             // in small letters
    std::optional<double> number;  // 0 to 9999
    bool glued = false;            // no space before it: the "mm" of "25mm"
    bool used = false;             // it stands in a field
};

class Phrase {
  public:
    explicit Phrase(std::vector<Token> tokens) : tokens_(std::move(tokens)) {}

    std::size_t size() const { return tokens_.size(); }
    const Token& operator[](std::size_t at) const { return tokens_[at]; }

    // Whether the word is there, belongs to no field yet, and is one of these.
    bool is(std::size_t at, std::initializer_list<std::string_view> words) const;
    bool free(std::size_t at) const { return at < tokens_.size() && !tokens_[at].used; }
    // A whole number of things, in digits or words.
    std::optional<int> count(std::size_t at) const;
    std::optional<double> number(std::size_t at) const;
    std::string words(std::size_t from, std::size_t to) const;  // in small letters
    void use(std::size_t from, std::size_t to);

  private:
    std::vector<Token> tokens_;
};

std::vector<Phrase> phrases_of(std::string_view line);

}  // namespace quarterturn::shorthand
