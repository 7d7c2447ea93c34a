#pragma once

#include <functional>
#include <span>
#include <vector>

#include "indexer/record/credit.h"
#include "indexer/record/photo.h"
#include "indexer/store/database.h"

namespace quarterturn {

// What the gate judges of a photo.
struct PhotoAtGate {
    // Of its record only: the number, the signs of a head, and of the tags those that say whose
    // head it is and how it was taken.
    Photo photo;
    Seen seen;
    Credit credit;
};

// Each photo of a pair of which it is recorded whose it is, but for those that are kept as pictures
// that clients brought, in the order of their numbers; with
// four statements, however many there are. What `see` is given holds until it returns. Throws
// StoreError.
void each_photo_of_pairs(Database& database, const std::function<void(const PhotoAtGate&)>& see);
// The same of those among these.
std::vector<PhotoAtGate> photos_at_gate(Database& database, std::span<const PhotoId> photos);

}  // namespace quarterturn
