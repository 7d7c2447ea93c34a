#pragma once
// Where a word stands, as far as photos are found by it: in their own record, or in what their
// sitting, look, client, wedding and recipe say.

#include <cstdint>
#include <optional>
#include <vector>

#include "indexer/record/photo.h"
#include "indexer/store/search_words.h"

namespace quarterturn {

struct PlacedPhoto {
    PhotoId id;
    std::optional<SittingId> sitting;
    std::optional<LookId> look;
};

class WordPlaces {
  public:
    // Throws StoreError, as all() does.
    WordPlaces(Database& database, const WordQuery& query);

    bool find(const PlacedPhoto& photo) const;
    // All photos that the word finds, in any order.
    std::vector<PlacedPhoto> all(Database& database) const;

  private:
    using Numbers = std::vector<std::int64_t>;  // in order

    bool finds_by_sitting(const PlacedPhoto& photo) const;
    bool finds_by_look(const PlacedPhoto& photo) const;

    Numbers sittings_;  // whose photos are found
    Numbers looks_;
    Numbers photos_;  // by their own words, and by who is shown
};

}  // namespace quarterturn
