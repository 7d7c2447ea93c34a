#pragma once

#include "indexer/sheet/page.h"
#include "indexer/store/library.h"

namespace quarterturn {

// The photos of the library that stand on the pages, each once, in their order. Throws StoreError.
std::vector<Photo> photos_on(Library& library, const Document& document);

}  // namespace quarterturn
