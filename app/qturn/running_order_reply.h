#pragma once

#include "app/qturn/reply.h"
#include "indexer/looks/running_order.h"

namespace quarterturn {

// The same while nobody is in the party.
Reply nobody_reply(const WeddingMorning& morning);

// The plan in words and as json.md describes it. Needs attention when somebody is late, a rule is
// not kept, or somebody cannot be planned.
Reply running_order_reply(const WeddingMorning& morning, const MorningPlan& plan);

// Whether the booking is possible at all. Needs attention when it is not.
Reply possible_reply(const WeddingMorning& morning, const MorningPlan& best);

}  // namespace quarterturn
