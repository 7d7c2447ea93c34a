#pragma once

#include "app/qturn/reply.h"
#include "indexer/intake/sort.h"

namespace quarterturn {

// How many photos were placed, and each that was not with the reason; those need attention.
Reply sort_reply(Library& library, const SortReport& report);

}  // namespace quarterturn
