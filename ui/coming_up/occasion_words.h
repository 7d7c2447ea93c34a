#pragma once

#include <QString>

#include "indexer/looks/coming_up.h"

namespace quarterturn {

QString occasion_title(
    const Occasion& occasion);  // "Wedding of Amara and Tom", "Trial, Amara Osei"
QString occasion_details(const Occasion& occasion);  // "10:00 to 12:30 · Old Mill · ready by 12:30"
QString client_title(const ClientAhead& client);     // "Amara Osei, bride"

// A further trial for the party of a wedding, or for the client of a sitting, a week from
// today at ten.
Sitting further_trial(const Occasion& occasion, Date today);

// Whether a look is worn at the wedding or worked on at the sitting of this occasion, for a
// look to be added to it.
Look new_look_for(const Occasion& occasion, const Client& client);

}  // namespace quarterturn
