#pragma once
// Whether the records have changed since they were backed up. Kept in cache/, so that writing it
// down is no change of the records; without it they count as changed.

#include <string>

#include "indexer/store/library.h"

namespace quarterturn {

bool records_unchanged(Library& library, const std::string& mark);
// Never throws DiskError: what cannot be kept costs a copy of the records the next time.
void remember_records(Library& library, const std::string& mark);

}  // namespace quarterturn
