#pragma once

#include "tests/indexer/rules/running_order_oracle.h"

namespace quarterturn {

// The best morning of clients who need not wait, found another way: without waiting a stylist never
// stands idle, so what is done before says when the next is begun, and the best order of every set
// of clients follows from those of its smaller sets. Nothing begins before `begins`.
LeastLateness least_without_waiting(const MorningNeeds& needs, int begins);

}  // namespace quarterturn
