#pragma once

#include <map>
#include <vector>

#include "indexer/record/hair_look.h"
#include "indexer/record/photo.h"
#include "indexer/store/database.h"

namespace quarterturn {

// What the hair looks like in the second photos of pairs. All functions throw StoreError.
class HairLookTable {
  public:
    // `version`: of the measure. Looks of another version, or of a photo that is shown the other
    // way round since, are as good as not there.
    HairLookTable(Database& database, int version) : database_(&database), version_(version) {}

    void keep(const Photo& photo, const HairLook& look);  // or anew
    std::map<PhotoId, HairLook> all();
    std::map<PhotoId, HairLook> of_pairs_from(Angle angle);
    std::vector<PhotoId> still_to_measure();  // second photos of pairs that have none

  private:
    Database* database_;
    int version_;
};

}  // namespace quarterturn
