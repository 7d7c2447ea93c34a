#pragma once
// What follows from what she said.

#include "indexer/looks/consents.h"

namespace quarterturn {

// What went out under her consents and may not be shown any longer.
std::vector<ToTakeDown> to_take_down_of(Library& library, ClientId client, Date today);

}  // namespace quarterturn
