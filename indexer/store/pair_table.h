#pragma once

#include <map>
#include <optional>
#include <span>
#include <vector>

#include "indexer/record/pair.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Pairs as they were made last, and what she said of them. A pair keeps its number while the look
// has one in that place. All functions throw StoreError.
class PairTable {
  public:
    explicit PairTable(Database& database) : database_(&database) {}

    // Looks of which something has changed since their pairs were made, `at_most` so many.
    std::vector<LookId> to_make(int at_most);
    // The pairs of each look as they are now: others are no longer there, but what she said is
    // kept.
    void keep_made(const std::map<LookId, std::vector<MadePair>>& pairs);

    // By the date worn, the newest first, then those without a date; then by number.
    std::vector<Pair> all();
    // Also the places of which there is no pair now, but a choice of hers; MadePair's photos are 0.
    std::vector<Pair> places_of(std::span<const LookId> looks);
    std::optional<Pair> find(PairId id);  // nothing while there is no pair in its place
    std::vector<Pair> these(std::span<const PairId> ids);  // those that are there, in this order
    // Places that have no pair now, though she pinned one or chose a photo for it.
    std::vector<Pair> without_photos();

    // Refuses a pinned pair without two photos.
    void choose(PairId id, const PairChoice& choice);

  private:
    Database* database_;
};

}  // namespace quarterturn
