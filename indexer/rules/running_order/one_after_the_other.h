#pragma once

#include <vector>

#include "indexer/rules/running_order.h"
#include "indexer/rules/running_order/calendar.h"

namespace quarterturn {

// Each client from begin to end by the ready-by times, with whoever is free first; every rule is
// kept. Nothing begins before `from`.
std::vector<Seat> one_after_the_other(const MorningNeeds& needs,
                                      const std::vector<Calendar>& calendars, int from);

}  // namespace quarterturn
