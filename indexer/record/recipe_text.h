#pragma once
// A recipe in words, the same on screen, on paper and in the exported record.

#include <string>
#include <vector>

#include "indexer/record/recipe.h"

namespace quarterturn {

struct RecipePart {
    std::string heading;             // "Parting"
    std::vector<std::string> lines;  // one for each product or step; never empty

    bool operator==(const RecipePart&) const = default;
};

std::string product_text(const Product& product);   // "foam, two pumps, roots"
std::string heat_tool_text(const HeatTool& tool);   // "curling iron, 25 mm, 160 °C"
std::string winding_text(const Winding& winding);   // "sections of 20 mm, away from the face"
std::string setting_text(const Setting& setting);   // "pinned, 15 min to cool"
std::string parting_text(const PartingLine& line);  // "4 cm left of the centre"
std::string pins_text(const Pins& pins);            // "6 × grip, brown, crossed"
std::string step_text(const Step& step);            // "Pin the twist. (6 × grip, brown; 10 min)"
std::string piece_text(const Piece& piece);         // "Padding: crescent, light, she brings it"
std::string sensitivity_text(const Sensitivity& sensitivity);

// What to beware of, a line each; nothing when nothing is said.
std::vector<std::string> caution_lines(const Recipe& recipe);

// The parts that say something: cautions first, then in working order.
std::vector<RecipePart> recipe_parts(const Recipe& recipe);

// The headings that parts can have, in the same order.
std::vector<std::string> recipe_headings();

}  // namespace quarterturn
