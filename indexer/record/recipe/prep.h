#pragma once
// What goes on the hair, the tool, and how it is wound and set. Millimetres, degrees, minutes.

#include <optional>
#include <string>

#include "indexer/record/recipe/words.h"

namespace quarterturn {

struct Product {
    std::string name;
    std::string amount;
    std::string where;  // roots, lengths, ends

    bool operator==(const Product&) const = default;
};

struct HeatTool {
    std::string kind;
    std::optional<double> barrel_mm;
    std::optional<int> temperature_c;
    std::optional<int> temperature_f = {};  // as her tool shows it: one of the two

    bool operator==(const HeatTool&) const = default;
};

struct Winding {
    std::optional<double> section_mm;  // how wide a piece of hair
    std::optional<Wind> direction;
    std::string root_lift;

    bool operator==(const Winding&) const = default;
};

struct Setting {
    std::string how;  // pinned, clipped, on rollers
    std::optional<int> cooling_minutes;
    std::optional<int> may_be_left_minutes;  // set, while others are done

    bool operator==(const Setting&) const = default;
};

}  // namespace quarterturn
