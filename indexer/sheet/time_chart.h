#pragma once

#include "indexer/looks/running_order.h"
#include "indexer/sheet/flow.h"

namespace quarterturn {

// Puts the chart across the whole width and goes down below it. A plan without seats has none.
void put_time_chart(SheetFlow& flow, const MorningNeeds& needs, const std::vector<Seat>& seats);

}  // namespace quarterturn
