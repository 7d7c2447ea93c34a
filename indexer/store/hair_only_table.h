#pragma once

#include <map>
#include <optional>

#include "indexer/record/hair_only.h"
#include "indexer/store/database.h"

namespace quarterturn {

// The pictures without a face that she confirmed by eye, one for a photo at most. All functions
// throw StoreError.
class HairOnlyTable {
  public:
    explicit HairOnlyTable(Database& database) : database_(&database) {}

    void keep(const HairOnly& hair_only);  // instead of what was confirmed before
    void forget(PhotoId photo);
    std::optional<HairOnly> of(PhotoId photo);

  private:
    Database* database_;
};

}  // namespace quarterturn
