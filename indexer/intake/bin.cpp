#include "indexer/intake/bin.h"

#include <map>

#include "indexer/intake/named_photos.h"

namespace quarterturn {
namespace {

void refuse_if_sealed(Library& library, const Photo& photo) {
    const auto sealed = library.sign_offs().sealed_in(photo.id);
    if (!sealed) return;
    const auto look = library.looks().find(*sealed);
    throw StoreError(photo.file.name + " is part of the signed-off look '" +
                     (look ? look->name : std::string{}) +
                     "', so it cannot go into the bin: open the sign-off again first, with your "
                     "reason, or leave the photo where it is.");
}

}  // namespace

Date leaves_bin(Date since) {
    return Date(std::chrono::local_days(since) + kept_in_bin);
}

void put_into_bin(Library& library, std::span<const PhotoId> ids, Date today) {
    Change change;
    const std::vector<Photo> photos = photos_named(library, ids);
    for (const Photo& photo : photos) {
        refuse_if_sealed(library, photo);
        change.binned.push_back({photo.id, library.bin().not_before(today)});
    }
    change.said = "put " + photos_text(photos) + " into the bin";
    library.history().apply(change);
}

void take_out_of_bin(Library& library, std::span<const PhotoId> ids) {
    Change change;
    std::vector<Photo> photos;
    for (const BinnedPhoto& binned : library.bin().all()) {
        if (std::ranges::find(ids, binned.photo.id) == ids.end()) continue;
        photos.push_back(binned.photo);
        change.binned.push_back({binned.photo.id, std::nullopt});
    }
    for (const PhotoId id : ids) {
        if (std::ranges::find(photos, id, &Photo::id) != photos.end()) continue;
        throw StoreError("There is no photo number " + std::to_string(id.value) + " in the bin.");
    }
    change.said = "took " + photos_text(photos) + " out of the bin";
    library.history().apply(change);
}

std::vector<LeavingBin> leaving_bin(Library& library) {
    std::map<Date, int> days;
    for (const BinnedPhoto& binned : library.bin().all()) ++days[leaves_bin(binned.since)];
    std::vector<LeavingBin> leaving;
    for (const auto& [on, photos] : days) leaving.push_back({on, photos});
    return leaving;
}

}  // namespace quarterturn
