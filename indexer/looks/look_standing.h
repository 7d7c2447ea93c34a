#pragma once

#include <map>
#include <vector>

#include "indexer/looks/coming_up.h"

namespace quarterturn {

// How each of these looks stands, in a fixed number of queries.
std::map<LookId, LookStanding> look_standings(Library& library, const std::vector<Look>& looks);

}  // namespace quarterturn
