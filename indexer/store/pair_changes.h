#pragma once
// Tells of which looks the pairs may be shown or found otherwise than before, whoever changed what.

#include <cstdint>
#include <optional>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/store/database.h"

namespace quarterturn {

// All functions throw StoreError.
class PairChanges {
  public:
    explicit PairChanges(Database& database) : database_(&database) {}

    std::int64_t last();  // grows with each change
    // The looks that changed after this one, and all others of the same clients, which share what
    // is told of their hair; some may be gone. Nothing where more than so many changed.
    std::optional<std::vector<LookId>> since(std::int64_t change, int at_most);

  private:
    Database* database_;
};

}  // namespace quarterturn
