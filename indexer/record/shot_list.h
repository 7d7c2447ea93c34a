#pragma once
// Which stage and angle a look needs.

#include <string>
#include <vector>

#include "indexer/record/words.h"

namespace quarterturn {

struct Shot {
    Stage stage = Stage::after;
    Angle angle = Angle::front;

    auto operator<=>(const Shot&) const = default;
};

struct ShotLine {
    Shot shot;
    Need need = Need::required;

    bool operator==(const ShotLine&) const = default;
};

using ShotList = std::vector<ShotLine>;

struct Waiver {
    Shot shot;
    std::string reason;

    bool operator==(const Waiver&) const = default;
};

std::string shot_text(const Shot& shot);  // "after, left three-quarter"

// Before and after from the four quarters are required; crown, three-quarters and detail of the
// finished look are nice to have.
ShotList default_shot_list();

// One line for each shot: a line for the same shot is changed, a new one goes to the end.
void set_line(ShotList& list, const ShotLine& line);
bool drop_line(ShotList& list, const Shot& shot);  // whether it was there

}  // namespace quarterturn
