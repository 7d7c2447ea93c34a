#pragma once

#include <optional>
#include <vector>

#include "indexer/record/hair_look.h"
#include "indexer/record/pair.h"
#include "indexer/record/photo.h"
#include "indexer/store/database.h"

namespace quarterturn {

struct PairHair {
    PairId pair;
    LookId look;
    HairLook hair;  // not told where it was not measured
};

// What the hair looks like in the second photos of pairs. All functions throw StoreError.
class HairLookTable {
  public:
    // `version`: of the measure. Looks of another version, or of a photo that is shown the other
    // way round since, are as good as not there.
    HairLookTable(Database& database, int version) : database_(&database), version_(version) {}

    void keep(const Photo& photo, const HairLook& look);  // or anew
    HairLook of(PhotoId photo);                           // not told where there is none
    // Of the pairs that are there and not refused, by the date worn, the newest first; those from
    // one angle, or all.
    std::vector<PairHair> of_pairs(std::optional<Angle> angle);
    std::vector<PhotoId> still_to_measure();  // second photos of pairs that have none

  private:
    Database* database_;
    int version_;
};

}  // namespace quarterturn
