#pragma once
// A ruler for layout tests: every letter is half as wide as it is high, lines break between words
// and within words that are too long.

#include <sstream>

#include "indexer/sheet/page.h"

namespace quarterturn {

class PlainRuler : public TextRuler {
  public:
    double height_mm(const std::string& text, double points, bool, double width_mm) override {
        const double em = points * 25.4 / 72;
        const auto per_line =
            std::max<std::size_t>(1, static_cast<std::size_t>(width_mm / (em / 2)));
        std::size_t lines = 0;
        std::istringstream paragraphs(text);
        for (std::string paragraph; std::getline(paragraphs, paragraph);) {
            lines += lines_of(paragraph, per_line);
        }
        return static_cast<double>(std::max<std::size_t>(lines, 1)) * em * 1.3;
    }

  private:
    static std::size_t lines_of(const std::string& paragraph, std::size_t per_line) {
        std::size_t lines = 1;
        std::size_t used = 0;
        std::istringstream words(paragraph);
        for (std::string word; words >> word;) {
            const std::size_t space = used > 0 ? 1 : 0;
            if (used + space + word.size() <= per_line) {
                used += space + word.size();
                continue;
            }
            if (used > 0) ++lines;
            lines += (word.size() - 1) / per_line;
            used = (word.size() - 1) % per_line + 1;
        }
        return lines;
    }
};

}  // namespace quarterturn
