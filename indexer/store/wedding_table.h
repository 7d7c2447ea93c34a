#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "indexer/record/people.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Lists are in the order of dates. The party keeps the order it was given in.
class WeddingTable {
  public:
    explicit WeddingTable(Database& database) : database_(&database) {}

    WeddingId add(const Wedding& wedding);
    void change(const Wedding& wedding);
    std::optional<Wedding> find(WeddingId id);
    std::vector<Wedding> all();
    std::vector<Wedding> named(std::string_view name);

  private:
    Database* database_;
};

}  // namespace quarterturn
