#pragma once

#include <map>
#include <span>
#include <vector>

#include "indexer/record/board.h"
#include "indexer/record/pair.h"
#include "indexer/store/database.h"

namespace quarterturn {

// How a pair was laid and where its head stands: enough to show it.
struct KeptLaying {
    PairAlignment alignment;
    double first_aspect = 1;  // width over height, upright
    double second_aspect = 1;
    HeadPoints first_points;
    double hair_left = 0;  // how far the hair reaches, in heights of the first picture
    double hair_right = 0;

    bool operator==(const KeptLaying&) const = default;
};

// Kept with the pairs, until a photo, the way it is shown or a point in it is another. All
// functions throw StoreError.
class LaidPairTable {
  public:
    // `version`: of the way heads are laid; what was kept of another is not answered.
    LaidPairTable(Database& database, int version) : database_(&database), version_(version) {}

    // Of those of them that are kept; one statement.
    std::map<PairId, KeptLaying> of(std::span<const PairId> pairs);
    // The pairs of these two photos with which nothing is kept.
    std::vector<PairId> to_keep(PhotoId first, PhotoId second);
    void keep(PairId pair, const KeptLaying& laying);

  private:
    Database* database_;
    int version_;
};

}  // namespace quarterturn
