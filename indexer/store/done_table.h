#pragma once

#include <vector>

#include "indexer/record/id.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Whose hair is done on the wedding morning, where there are no steps to tick. All functions throw
// StoreError.
class DoneTable {
  public:
    explicit DoneTable(Database& database) : database_(&database) {}

    void set(WeddingId wedding, ClientId client);
    void clear(WeddingId wedding, ClientId client);
    std::vector<ClientId> of_wedding(WeddingId wedding);

  private:
    Database* database_;
};

}  // namespace quarterturn
