#pragma once
// Tells whether anything in the records may have changed since they were read.

#include <compare>
#include <cstdint>

#include "indexer/store/database.h"

namespace quarterturn {

struct ChangeStamp {
    std::int64_t by_others = 0;
    std::int64_t by_us = 0;

    bool operator==(const ChangeStamp&) const = default;
};

// Two that are equal, of one open library: nothing changed between them. Throws StoreError.
ChangeStamp change_stamp(Database& database);

}  // namespace quarterturn
