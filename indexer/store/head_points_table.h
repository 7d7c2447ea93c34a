#pragma once

#include <optional>

#include "indexer/record/board.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Where the head stands in a photo, where she has shown it by hand. All functions throw StoreError.
class HeadPointsTable {
  public:
    explicit HeadPointsTable(Database& database) : database_(&database) {}

    void set(PhotoId photo, const HeadPoints& points);  // or sets them anew
    void clear(PhotoId photo);
    std::optional<HeadPoints> of(PhotoId photo);

  private:
    Database* database_;
};

}  // namespace quarterturn
