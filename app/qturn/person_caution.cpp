#include "app/qturn/person_caution.h"

#include "indexer/record/caution.h"

namespace quarterturn {

void tell_caution(Reply& reply, bool shows_photos) {
    reply.data["caution"] = shows_photos ? caution_before_passing_on : "";
    if (shows_photos) reply.lines.emplace_back(caution_before_passing_on);
}

}  // namespace quarterturn
