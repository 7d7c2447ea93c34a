#pragma once

#include <map>
#include <string>
#include <string_view>

#include "indexer/record/people.h"
#include "indexer/store/database.h"

namespace quarterturn {

// What she has ticked as packed for a wedding: how many there were to be then, by item. All
// functions throw StoreError.
class KitTickTable {
  public:
    explicit KitTickTable(Database& database) : database_(&database) {}

    void set(WeddingId wedding, std::string_view item, std::int64_t count);  // or sets it anew
    void clear(WeddingId wedding, std::string_view item);  // as if it had never been ticked
    std::map<std::string, std::int64_t> of_wedding(WeddingId wedding);

  private:
    Database* database_;
};

}  // namespace quarterturn
