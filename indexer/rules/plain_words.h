#pragma once
// Words as they are compared: letters A to Z in lower case, everything that is no letter or digit a
// space between words. Other scripts stay as they are.

#include <string>
#include <string_view>
#include <vector>

namespace quarterturn {

class PlainWords {
  public:
    explicit PlainWords(std::string_view text);

    std::string text() const;  // "to the shoulders"

    // Whether the phrase stands among the words that were not taken yet; those words are taken, as
    // often as they stand there. A phrase behind "no", "not", "without" or "nor" is taken and does
    // not count, unless it begins with one of these itself.
    bool take(std::string_view phrase);

    // Whether the words of `phrase` stand here in their order, with so many others between each two
    // of them at most.
    bool say_in_order(std::string_view phrase, int others_between) const;

  private:
    std::vector<std::string> words_;  // empty where taken
};

}  // namespace quarterturn
