#pragma once
// What actions change in tags, clock shifts and the bin, kept field by field: what came to a photo
// since, as a place by its time, stays.

#include <map>

#include "indexer/store/history.h"

namespace quarterturn {

template <class Value>
struct FromTo {
    Value before;
    Value after;
};

struct PhotoSteps {
    std::map<PhotoId, FromTo<Tags>> tags;
    std::map<DeviceId, FromTo<std::chrono::seconds>> shifts;
    std::map<PhotoId, FromTo<std::optional<Date>>> binned;

    bool none() const { return tags.empty() && shifts.empty() && binned.empty(); }
};

// What the change would alter; the last word on a photo or device counts. Throws StoreError for one
// that is not there.
PhotoSteps photo_steps(Database& database, const Change& change);
void take_steps(Database& database, const PhotoSteps& steps);

void keep_steps(Database& database, std::int64_t action, const PhotoSteps& steps);

struct TurnedSteps {
    bool moves_photos = false;  // by their time, photos may belong into other sittings since
    std::vector<PhotoId> binned{};
};

TurnedSteps take_steps_back(Database& database, std::int64_t action);
TurnedSteps take_steps_again(Database& database, std::int64_t action);

}  // namespace quarterturn
