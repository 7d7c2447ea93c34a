#pragma once
// Which rules of the recipe check are on, and what each weighs: recipe-rules.txt in the library's
// folder, a line "patch test = bar" for each rule that weighs otherwise than usual. The words are
// bar, warning and off; what follows '#' is a remark.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/disk/file_system.h"
#include "indexer/rules/recipe/recipe_rules.h"

namespace quarterturn {

class Library;

inline constexpr const char* recipe_rules_name = "recipe-rules.txt";
inline constexpr const char* recipe_rules_before_name = "recipe-rules-before.txt";

struct ReadRules {
    RecipeRules rules;
    std::vector<std::string> problems;  // a sentence for each line that is not understood
};

ReadRules parse_recipe_rules(std::string_view text);
// A file that names every rule, what it looks for and what it weighs.
std::string recipe_rules_text(const RecipeRules& rules);

// The usual rules when there is no such file. Throws DiskError.
ReadRules read_recipe_rules(Library& library);
// Answers where the file lies that stood there before with other words, her remarks among them.
std::optional<Path> write_recipe_rules(Library& library, const RecipeRules& rules);

}  // namespace quarterturn
