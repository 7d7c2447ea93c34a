#pragma once
// What changed between two recipes, by field and by step.

#include <optional>
#include <string>
#include <vector>

#include "indexer/record/recipe.h"

namespace quarterturn {

enum class StepEdit { kept, changed, added, removed };

struct StepChange {
    StepEdit edit = StepEdit::kept;
    std::optional<std::size_t> was;  // its place among the old steps, from 0
    std::optional<std::size_t> is;   // and among the new ones
    Step step;                       // the new one, where it is changed or added

    bool operator==(const StepChange&) const = default;
};

struct RecipeDifference {
    std::vector<std::string> fields;  // names of those that changed, in working order; not "build"
    Recipe now;                       // their new values, and nothing else
    std::vector<StepChange> steps;    // old and new ones in order; none when all are as they were

    bool empty() const { return fields.empty() && steps.empty(); }
    bool operator==(const RecipeDifference&) const = default;
};

// Steps belong together when they are equal, or when at least two words of five are in both.
RecipeDifference recipe_difference(const Recipe& was, const Recipe& is);

// The recipe with the difference made: of the difference of two recipes and the first, the second.
Recipe with_difference(const Recipe& first, const RecipeDifference& difference);

// The same in words, for a table of two columns.
struct ToldChange {
    std::string what;              // "Parting", "Step 3"
    std::vector<std::string> was;  // none where it was not there
    std::vector<std::string> is;

    bool operator==(const ToldChange&) const = default;
};
std::vector<ToldChange> told_changes(const Recipe& was, const RecipeDifference& difference);

}  // namespace quarterturn
