#pragma once
// One step of the build.

#include <optional>
#include <string>
#include <vector>

#include "indexer/record/recipe/prep.h"

namespace quarterturn {

struct Pins {
    std::string kind;
    std::string colour;
    std::optional<int> count;
    bool crossed = false;  // a second pin across the first

    bool operator==(const Pins&) const = default;
};

struct Backcombing {
    std::string where;
    std::string amount;

    bool operator==(const Backcombing&) const = default;
};

struct Step {
    std::string words;
    std::optional<int> minutes;  // hands-on
    std::vector<Pins> pins;
    std::optional<int> waiting_minutes = {};
    std::vector<Product> products = {};
    std::optional<HeatTool> heat_tool = {};
    Winding winding = {};
    Setting setting = {};
    std::optional<Backcombing> backcombing = {};
    std::vector<std::string> photos = {};  // SHA-256 of each, in lower-case hex

    bool operator==(const Step&) const = default;
};

}  // namespace quarterturn
