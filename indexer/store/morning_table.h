#pragma once

#include "indexer/record/morning.h"
#include "indexer/store/database.h"

namespace quarterturn {

// What she has said of a wedding's morning. A client that leaves the library takes hers along.
class MorningTable {
  public:
    explicit MorningTable(Database& database) : database_(&database) {}

    // As it is when nothing was said: one stylist, no wishes, no plan of hers.
    Morning of(WeddingId wedding);
    // Wishes that say nothing are left out. Throws StoreError when there is no such wedding or
    // client, or not one to most_stylists stylists.
    void save(WeddingId wedding, const Morning& morning);

  private:
    Database* database_;
};

}  // namespace quarterturn
