#pragma once
// How a look is made, in working order. Every part may be left empty; `rules/recipe_check.h` says
// what must be there before sign-off.

#include <optional>
#include <string>
#include <vector>

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

    bool operator==(const HeatTool&) const = default;
};

struct Pins {
    std::string kind;
    std::string colour;
    std::optional<int> count;
    bool crossed = false;  // a second pin across the first

    bool operator==(const Pins&) const = default;
};

struct Step {
    std::string words;
    std::optional<int> minutes;  // hands-on
    std::vector<Pins> pins;

    bool operator==(const Step&) const = default;
};

struct Recipe {
    std::string hair;      // hair on the day: washed when, length, texture, density, colour
    std::string cautions;  // allergies, patch test, tender spots
    std::vector<Product> prep;
    std::string heat_protection;
    std::optional<HeatTool> heat_tool;
    std::string sections;
    std::string parting;
    std::vector<Step> build;
    std::string accessory;  // "none" when there is none
    std::string finish;
    std::string feedback;  // the client's words, and her yes
    std::optional<int> hands_on_minutes;
    std::optional<int> waiting_minutes;

    bool operator==(const Recipe&) const = default;
};

}  // namespace quarterturn
