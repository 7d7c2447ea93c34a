#pragma once
// The head of the first page: whose sheet it is, and how complete.

#include "indexer/sheet/flow.h"

namespace quarterturn {

void put_header(SheetFlow& flow, const SheetHeader& header);

}  // namespace quarterturn
