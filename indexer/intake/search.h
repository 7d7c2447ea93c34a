#pragma once
// Choosing photos by what is known of them.

#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

// In the order of moments. Throws StoreError.
std::vector<Photo> search_photos(Library& library, const PhotoSearch& search);

}  // namespace quarterturn
