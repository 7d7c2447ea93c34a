#pragma once
// What the recipe commands answer in common.

#include "app/qturn/reply.h"
#include "indexer/rules/recipe_check.h"
#include "indexer/store/library.h"

namespace quarterturn {

nlohmann::json revision_json(const RecipeRevision& revision);
std::string revision_text(const RecipeRevision& revision);  // "Revision 2, saved 2026-11-07 12:10"
std::vector<std::string> recipe_lines(const Recipe& recipe);

// The look's current revision, or the one of this number. Throws WrongUse when there is none.
RecipeRevision chosen_revision(Library& library, const Look& look, std::optional<int> number);

void add_look(Reply& reply, const Look& look);
void add_findings(Reply& reply, const std::vector<RecipeFinding>& findings);

// "parting=deep side part" or "heat_tool.barrel_mm=25" or "build.2.minutes=10": a text is taken as
// it stands, all else is written as JSON. Throws WrongUse and StoreError.
Recipe with_part(const Recipe& recipe, const std::string& text);

}  // namespace quarterturn
