#pragma once

#include "indexer/rules/running_order.h"

namespace quarterturn {

// As plan_morning() answers and throws. Remembers the last few plans, since screens ask for the
// same one after each change of the records and a hard morning takes up to a second. For any
// thread.
RunningOrder known_plan(const MorningNeeds& needs);

}  // namespace quarterturn
