#pragma once

#include <optional>
#include <vector>

#include "indexer/record/people.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Lists are in the order of starts. Refuses a sitting that ends before it starts.
class SittingTable {
  public:
    explicit SittingTable(Database& database) : database_(&database) {}

    SittingId add(const Sitting& sitting);
    void change(const Sitting& sitting);
    std::optional<Sitting> find(SittingId id);
    std::vector<Sitting> all();
    std::vector<Sitting> of_client(ClientId client);

  private:
    Database* database_;
};

}  // namespace quarterturn
