#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "indexer/record/id.h"
#include "indexer/record/inspiration.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Pictures that clients brought along. All functions throw StoreError.
class InspirationTable {
  public:
    explicit InspirationTable(Database& database) : database_(&database) {}

    // `id` is not looked at. Refuses the same picture twice for one client.
    InspirationId add(const Inspiration& inspiration);
    void remove(InspirationId id);
    std::optional<Inspiration> find(InspirationId id);
    std::optional<Inspiration> of_client(ClientId client, std::string_view sha256);
    // The names of those of these photos whose bytes are kept as such a picture.
    std::vector<std::string> names_among(std::span<const PhotoId> photos);
    std::vector<Inspiration> all();  // in the order they were kept
    std::vector<Inspiration> of_client(ClientId client);

  private:
    Database* database_;
};

}  // namespace quarterturn
