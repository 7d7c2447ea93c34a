#pragma once
// What a look can be found by, read out of the words of its name and recipe by plain rules: a fixed
// list of phrases for each value. What is not sure is left for her to say. Words: common practice.

#include <span>
#include <string>
#include <vector>

#include "indexer/record/look_facts.h"
#include "indexer/record/recipe.h"

namespace quarterturn {

// In the order of facts, each once. A look is of one of `families` when the words of that family
// stand in its name in their order, with two others between at most ("Low twisted bun"), or when it
// is a usual family and the name has another word for it ("chignon").
LookFacts read_facts(const std::string& look_name, const Recipe& recipe,
                     std::span<const std::string> families);

// What read_facts() can tell of a length, texture, density, colour, parting or accessory; nothing
// of other facts.
std::vector<std::string> usual_values(Fact fact);

}  // namespace quarterturn
