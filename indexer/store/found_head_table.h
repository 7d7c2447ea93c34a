#pragma once

#include <map>
#include <optional>
#include <span>
#include <vector>

#include "indexer/record/found_head.h"
#include "indexer/record/id.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Nothing where no head was found.
using FoundHead = std::optional<HeadBox>;

// Heads that were found in photos, so that each is looked for once. All functions throw StoreError.
class FoundHeadTable {
  public:
    // `version`: of the way they are looked for. Those of another version are as good as not there.
    FoundHeadTable(Database& database, int version) : database_(&database), version_(version) {}

    void keep(const std::map<PhotoId, FoundHead>& heads);  // or anew
    std::map<PhotoId, FoundHead> of(std::span<const PhotoId> photos);

  private:
    Database* database_;
    int version_;
};

}  // namespace quarterturn
