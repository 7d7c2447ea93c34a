#pragma once
// Puts rows as they are to be after a set of changes, all of them or none.

#include "indexer/store/row_changes.h"

namespace quarterturn {

// Why the rows were left as they are; what() is a sentence. `changed_since` when they are no longer
// as the changes found or left them, so that these can never be made again.
class NotApplied : public StoreError {
  public:
    NotApplied(const std::string& why, bool since) : StoreError(why), changed_since(since) {}
    bool changed_since;
};

NotApplied it_was_changed_since();

// Within a transaction, which must not be committed when this throws. What she wrote into a draft
// of a recipe since then stays in it. Photos that lie by their time in a sitting that goes lie in
// none. Throws NotApplied, also where other records hang on one that is to go, and StoreError.
void apply_changes(Database& database, const std::vector<RowChange>& changes);

// For changes within a transaction that are right only together.
void hold_references(Database& database);
void refuse_broken_references(Database& database);  // throws NotApplied

}  // namespace quarterturn
