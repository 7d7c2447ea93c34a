#include "indexer/intake/by_sitting.h"

#include <map>

namespace quarterturn {

std::vector<PhotosOfSitting> count_by_sitting(Library& library, std::span<const PhotoId> photos) {
    std::map<SittingId, int> counts;
    for (const PhotoId id : photos) {
        const auto photo = library.photos().find(id);
        if (photo && photo->tags.sitting) ++counts[*photo->tags.sitting];
    }
    std::vector<PhotosOfSitting> by_sitting;
    for (const Sitting& sitting : library.sittings().all()) {
        const auto found = counts.find(sitting.id);
        if (found != counts.end()) by_sitting.push_back({sitting, found->second});
    }
    return by_sitting;
}

}  // namespace quarterturn
