#pragma once

#include <map>
#include <optional>
#include <span>

#include "indexer/record/credit.h"
#include "indexer/record/id.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Whose photos they are, and what she said of the people in them. All functions throw StoreError.
class CreditTable {
  public:
    explicit CreditTable(Database& database) : database_(&database) {}

    // Instead of what was recorded before. Refuses a photographer without a name, and a photo that
    // is kept as a picture that a client brought, but as somebody else's.
    void set(std::span<const PhotoId> photos, const Credit& credit);
    void forget(std::span<const PhotoId> photos);  // as if nobody had said
    // Nothing: nobody said. A photo that is kept by now as a picture that a client brought is
    // somebody else's, whatever was said.
    std::optional<Credit> of(PhotoId photo);
    std::map<PhotoId, Credit> all();

    void set_seen(PhotoId photo, const Seen& seen);
    Seen seen(PhotoId photo);
    std::map<PhotoId, Seen> all_seen();  // of those of which she said anything

  private:
    Database* database_;
};

}  // namespace quarterturn
