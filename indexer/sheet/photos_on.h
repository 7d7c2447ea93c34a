#pragma once

#include "indexer/sheet/page.h"
#include "indexer/store/library.h"

namespace quarterturn {

// The photos of the library that stand on the pages, each once, in their order. Throws StoreError.
std::vector<Photo> photos_on(Library& library, const Document& document);

bool shows_photos(const Document& document);

// The document, as it may be written for her own work and for the clients themselves. Throws
// StoreError with all that stands against it on the day (looks/passing_on.h).
Document for_own_work(Library& library, Document document, Date on);

}  // namespace quarterturn
