#pragma once

#include "app/qturn/reply.h"
#include "indexer/intake/day_photos.h"
#include "indexer/looks/as_made.h"
#include "indexer/sheet/laid_pair.h"

namespace quarterturn {

// Each in words and as json.md describes it.

// Needs attention while a photo has no look proposed.
Reply day_photos_reply(Library& library, const Wedding& wedding,
                       const std::vector<DayProposal>& proposals);

// Lays the pairs upon each other. Needs attention when one does not lie right.
Reply as_made_reply(Library& library, Decoder& decoder, const WeddingAsMade& made);

Reply head_points_reply(const Photo& photo, const std::optional<HeadPoints>& points);

}  // namespace quarterturn
