#pragma once
// Recipes: each deliberately saved change of a look's recipe is a revision. A draft holds what she
// has written since and not yet saved.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/record/recipe.h"
#include "indexer/record/time.h"
#include "indexer/store/database.h"

namespace quarterturn {

struct RecipeRevision {
    RevisionId id;
    int number = 1;  // counts from 1 within the look
    LocalTime saved_at{};
    Recipe recipe;
    std::optional<SittingId> sitting = {};  // at which it was written
};

struct RecipeDraft {
    LocalTime kept_at{};
    Recipe recipe;
};

class RecipeTable {
  public:
    explicit RecipeTable(Database& database) : database_(&database) {}

    // A recipe equal to the current one makes no new revision; answers the current one's id. The
    // look's draft is done with.
    RevisionId save(LookId look, const Recipe& recipe, LocalTime now,
                    std::optional<SittingId> sitting = {});
    std::optional<RecipeRevision> current(LookId look);
    std::vector<RecipeRevision> revisions(LookId look);  // oldest first

    // Replaces the look's draft; one that is equal to the current revision is none.
    void keep_draft(LookId look, const Recipe& recipe, LocalTime now);
    void drop_draft(LookId look);
    std::optional<RecipeDraft> draft(LookId look);
    // What she was writing last: the draft, else the current revision, else nothing yet.
    Recipe begun(LookId look);

  private:
    Database* database_;
};

// Canonical: keys sorted, no white space, UTF-8. Fields that came after the first version are there
// only where they say something, so that the SHA-256 that seals an old recipe stays true. Described
// by recipe.schema.json. Throws StoreError for a text that is no UTF-8 and a number or date that is
// none.
std::string recipe_json(const Recipe& recipe);
std::vector<std::string> recipe_field_names();  // in working order
// Fields that are absent are empty. Throws StoreError naming the field that has a wrong shape and
// any field that is not known.
Recipe parse_recipe_json(std::string_view json);

}  // namespace quarterturn
