#pragma once
// What a file name or a keyword says of the angle: a suggestion only.

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "indexer/record/words.h"

namespace quarterturn {

struct AngleSuggestion {
    Angle angle = Angle::front;
    std::string source;  // "keyword 'left'", "file name"
};

// Keywords are looked at first. Only whole words count: "leftover.jpg" says nothing, and a name
// that says two different angles says nothing.
std::optional<AngleSuggestion> suggest_angle(std::string_view file_name,
                                             std::span<const std::string> keywords);

}  // namespace quarterturn
