#pragma once

#include <map>
#include <vector>

#include "indexer/looks/coming_up.h"

namespace quarterturn {

// How each of these looks stands, in a fixed number of queries, and two more for each second look
// that comes from another one.
std::map<LookId, LookStanding> look_standings(Library& library, const std::vector<Look>& looks);

}  // namespace quarterturn
