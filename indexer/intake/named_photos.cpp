#include "indexer/intake/named_photos.h"

#include <set>

namespace quarterturn {

std::vector<Photo> photos_named(Library& library, std::span<const PhotoId> ids) {
    std::vector<Photo> photos;
    std::set<PhotoId> once;
    for (const PhotoId id : ids) {
        if (!once.insert(id).second) continue;
        auto photo = library.photos().find(id);
        if (!photo) throw StoreError("There is no photo number " + std::to_string(id.value) + ".");
        photos.push_back(std::move(*photo));
    }
    return photos;
}

std::string photos_text(const std::vector<Photo>& photos) {
    return photos.size() == 1 ? photos.front().file.name
                              : std::to_string(photos.size()) + " photos";
}

}  // namespace quarterturn
