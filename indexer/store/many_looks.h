#pragma once
// What hangs on many looks at once. Each function is one query, however many looks there are, for
// screens that list them.

#include <map>
#include <string>
#include <vector>

#include "indexer/record/people.h"
#include "indexer/record/photo.h"
#include "indexer/record/recipe.h"
#include "indexer/record/shot_list.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Looks that have nothing of the kind are not in the answers. All functions throw StoreError.
class ManyLooks {
  public:
    ManyLooks(Database& database, const std::vector<LookId>& looks);

    std::map<LookId, ShotList> shot_lists();  // lists of their own
    std::map<LookId, std::vector<Waiver>> waivers();
    std::map<LookId, Recipe> recipes();  // the current revisions
    std::map<LookId, Recipe> drafts();
    std::map<LookId, LocalTime> signed_at();  // of the sign-offs that stand
    // Every photo that may count for one of the looks, as PhotoTable::around_look() finds them.
    std::vector<Photo> photos();

  private:
    Database* database_;
    std::string ids_;  // a JSON array
};

}  // namespace quarterturn
