#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "indexer/record/pair.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Filters of pairs that she keeps under names of her own; spellings as folded() takes them for one.
// All functions throw StoreError.
class PairFilterTable {
  public:
    explicit PairFilterTable(Database& database) : database_(&database) {}

    void keep(const KeptPairFilter& filter);  // in place of one of that name
    std::vector<KeptPairFilter> all();        // by name
    std::optional<PairFilter> find(std::string_view name);
    void remove(std::string_view name);

  private:
    Database* database_;
};

}  // namespace quarterturn
