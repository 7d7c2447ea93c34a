#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "indexer/record/selection.h"
#include "indexer/store/database.h"

namespace quarterturn {

// Names are told apart case folded; lists are in their order. All functions throw StoreError.
class SelectionTable {
  public:
    explicit SelectionTable(Database& database) : database_(&database) {}

    // Instead of what had the name before; a photo that is named twice stands where it was first.
    // Photos of it that lie in the bin stay its own, at its end; all() and find() leave them out.
    void keep(const PhotoSelection& selection);
    std::vector<PhotoSelection> all();
    std::optional<PhotoSelection> find(std::string_view name);
    void remove(std::string_view name);

  private:
    Database* database_;
};

}  // namespace quarterturn
