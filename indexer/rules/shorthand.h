#pragma once
// A step as she says it to herself at the chair, "25mm tongs away, 4 pins crossed", read into
// fields that she can correct. Sizes are millimetres; inches and centimetres are turned into them.

#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/recipe/build.h"

namespace quarterturn {

struct ShorthandPart {
    std::string text;  // as written, without the spaces around it
    bool understood = false;

    bool operator==(const ShorthandPart&) const = default;
};

struct Shorthand {
    Step step;                         // what is not understood is in its words
    std::vector<ShorthandPart> parts;  // every word of the line, in order
};

// Any text, of any length; never throws.
Shorthand parse_shorthand(std::string_view line);

}  // namespace quarterturn
