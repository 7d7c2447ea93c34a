#include "indexer/intake/search.h"

#include <algorithm>
#include <set>

namespace quarterturn {
namespace {

struct RowsOfClient {
    ClientId client;
    std::set<SittingId> sittings;
    std::set<LookId> looks;

    RowsOfClient(Library& library, ClientId id) : client(id) {
        for (const Sitting& sitting : library.sittings().of_client(id)) sittings.insert(sitting.id);
        for (const Look& look : library.looks().of_client(id)) looks.insert(look.id);
    }

    bool concerns(const Tags& tags) const {
        return (tags.sitting && sittings.contains(*tags.sitting)) ||
               (tags.look && looks.contains(*tags.look)) ||
               std::find(tags.shown.begin(), tags.shown.end(), client) != tags.shown.end();
    }
};

bool matches(const Photo& photo, const PhotoSearch& search) {
    const Tags& tags = photo.tags;
    return (!search.look || tags.look == search.look) &&
           (!search.sitting || tags.sitting == search.sitting) &&
           (!search.unplaced || !tags.sitting) &&
           (!search.untagged || !tags.angle || !tags.stage) &&
           (!search.flawed || !photo.flaws.empty());
}

}  // namespace

std::vector<Photo> search_photos(Library& library, const PhotoSearch& search) {
    auto photos = library.photos().all();
    std::erase_if(photos, [&](const Photo& photo) { return !matches(photo, search); });
    if (search.client) {
        const RowsOfClient hers(library, *search.client);
        std::erase_if(photos, [&](const Photo& photo) { return !hers.concerns(photo.tags); });
    }
    return photos;
}

}  // namespace quarterturn
