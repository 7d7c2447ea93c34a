#include "indexer/intake/search.h"

namespace quarterturn {

std::vector<Photo> search_photos(Library& library, const PhotoSearch& search) {
    std::vector<PhotoId> ids;
    for (const FoundPhoto& found : library.search().find(search)) ids.push_back(found.id);
    return library.photos().these(ids);
}

}  // namespace quarterturn
