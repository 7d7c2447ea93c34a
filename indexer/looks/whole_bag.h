#pragma once

#include <functional>

#include "indexer/looks/bag.h"

namespace quarterturn {

// Writes a bag that appears under its name only when all of it is on the disk; until then it is
// built beside it. `fill` adds the payload and finishes the bag. Throws StoreError when something
// of that name is there already; DiskError when it cannot be written, and then leaves nothing.
void write_whole_bag(FileSystem& disk, const Path& folder,
                     const std::function<void(BagWriter&)>& fill);

}  // namespace quarterturn
