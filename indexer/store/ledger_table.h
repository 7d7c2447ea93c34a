#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "indexer/record/ledger.h"
#include "indexer/store/database.h"

namespace quarterturn {

// What went out of the library, only ever added to. Lists are in the order it went. All functions
// throw StoreError.
class LedgerTable {
  public:
    explicit LedgerTable(Database& database) : database_(&database) {}

    // Its id, places and taken_down are not looked at.
    ExportId add(const Exported& exported);
    void add_place(ExportId id, std::string_view place);
    void take_down(ExportId id, const TakenDown& taken_down);  // refuses a second time
    std::optional<Exported> find(ExportId id);
    std::vector<Exported> all();
    ExportId next_id();  // what add() would answer now

  private:
    Database* database_;
};

}  // namespace quarterturn
