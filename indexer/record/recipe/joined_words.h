#pragma once
// Words for a recipe's parts: what is empty leaves no trace.

#include <optional>
#include <string>
#include <string_view>

namespace quarterturn {

class JoinedWords {
  public:
    explicit JoinedWords(std::string_view between = ", ") : between_(between) {}

    JoinedWords& add(std::string_view words, std::string_view before = {},
                     std::string_view after = {}) {
        if (words.empty()) return *this;
        if (!text_.empty()) text_ += between_;
        text_.append(before).append(words).append(after);
        return *this;
    }
    JoinedWords& add(std::optional<int> number, std::string_view before, std::string_view after) {
        return number ? add(std::to_string(*number), before, after) : *this;
    }

    std::string text() { return std::move(text_); }

  private:
    std::string_view between_;
    std::string text_;
};

std::string length_text(double size, std::string_view unit);  // "25 mm", "12.5 mm"

}  // namespace quarterturn
