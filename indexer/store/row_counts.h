#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "indexer/store/database.h"

namespace quarterturn {

struct RowCount {
    std::string table;
    std::int64_t rows = 0;
};

// Every table that holds records, by name; not those that SQLite keeps for itself. Throws
// StoreError.
std::vector<RowCount> row_counts(Database& database);

// How many photos have a name that ends so, in small letters without the dot: "jpg", "heic" …; all
// others are counted under "other". Throws StoreError.
std::vector<RowCount> photo_counts_by_ending(Database& database);

}  // namespace quarterturn
