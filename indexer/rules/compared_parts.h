#pragma once
// Two recipes side by side, part by part and step by step in working order, with what stayed.

#include <string>
#include <vector>

#include "indexer/record/recipe.h"

namespace quarterturn {

enum class PartEdit { same, changed, added, removed };

struct ComparedPart {
    PartEdit edit = PartEdit::same;
    std::string what;              // "Parting"; "Step 3"
    std::vector<std::string> was;  // lines, as recipe_text tells them; none where it was not there
    std::vector<std::string> is;
    bool drawing = false;  // the head plan: its lines say less than the drawing shows

    bool operator==(const ComparedPart&) const = default;
};

std::vector<ComparedPart> compared_parts(const Recipe& was, const Recipe& is);

}  // namespace quarterturn
