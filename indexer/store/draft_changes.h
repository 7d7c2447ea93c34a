#pragma once
// Drafts of recipes keep themselves while she writes. An edit that changed one is taken back, or
// done again, in what she has written by then.

#include <vector>

#include "indexer/record/recipe.h"
#include "indexer/store/recipe_table.h"
#include "indexer/store/row_changes.h"

namespace quarterturn {

class DraftChanges {
  public:
    explicit DraftChanges(Database& database) : database_(&database) {}

    // A change of a row of recipe_draft that no longer finds it as it was. Before the look's
    // revisions change; write() after it.
    void add(const RowChange& change);
    void write();

  private:
    struct Draft {
        LookId look;
        Recipe now;
        LocalTime kept_at;
        Recipe before;
        std::optional<Recipe> after;  // nothing: the revision that is current then
    };

    Database* database_;
    std::vector<Draft> drafts_;
};

}  // namespace quarterturn
