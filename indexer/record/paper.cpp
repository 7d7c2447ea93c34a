#include "indexer/record/paper.h"

#include <algorithm>

namespace quarterturn {
namespace {

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

}  // namespace

std::string_view word(Paper paper) {
    switch (paper) {
        case Paper::a3:
            return "a3";
        case Paper::a4:
            return "a4";
        case Paper::a5:
            return "a5";
        case Paper::letter:
            return "letter";
    }
    return {};
}

std::optional<Paper> parse_paper(std::string_view text) {
    for (const Paper paper : all_papers) {
        if (std::ranges::equal(text, word(paper), {}, lower)) return paper;
    }
    return std::nullopt;
}

}  // namespace quarterturn
