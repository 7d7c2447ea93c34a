#include "indexer/sheet/page.h"

namespace quarterturn {

Size paper_size(Paper paper, bool landscape) {
    Size size;
    switch (paper) {
        case Paper::a3:
            size = {297, 420};
            break;
        case Paper::a4:
            size = {210, 297};
            break;
        case Paper::a5:
            size = {148, 210};
            break;
        case Paper::letter:
            size = {215.9, 279.4};
            break;
    }
    if (landscape) std::swap(size.width, size.height);
    return size;
}

std::optional<Paper> parse_paper(std::string_view text) {
    std::string wanted(text);
    for (char& c : wanted) c = (c >= 'A' && c <= 'Z') ? static_cast<char>(c - 'A' + 'a') : c;
    if (wanted == "a3") return Paper::a3;
    if (wanted == "a4") return Paper::a4;
    if (wanted == "a5") return Paper::a5;
    if (wanted == "letter") return Paper::letter;
    return std::nullopt;
}

}  // namespace quarterturn
