#pragma once
// How another look is made from this or an earlier one, in words that a bridesmaid can follow, and
// what the client said.

#include <optional>
#include <string>
#include <vector>

#include "indexer/record/recipe/words.h"
#include "indexer/record/time.h"

namespace quarterturn {

struct SecondLook {
    std::string from;  // name of the client's look it comes from; empty: the look of this recipe
    std::string taken_out;
    std::string stays;
    std::string done_by;
    std::string at;  // "18:30"
    std::vector<std::string> steps;

    bool operator==(const SecondLook&) const = default;
};

struct FeedbackDetails {
    std::string front;  // how she wants it to frame her face
    std::string to_change;
    std::optional<Date> yes_on;
    std::string yes_how;  // "in the chair", "by message"
    std::optional<SeenIn> seen_in;

    bool operator==(const FeedbackDetails&) const = default;
};

}  // namespace quarterturn
