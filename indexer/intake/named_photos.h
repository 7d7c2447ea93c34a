#pragma once
// Photos that an action of hers is about.

#include <span>
#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

// Each once, in the order they are named. Throws StoreError when one is not there, or in the bin.
std::vector<Photo> photos_named(Library& library, std::span<const PhotoId> ids);

// "IMG_0012.jpg", "12 photos"
std::string photos_text(const std::vector<Photo>& photos);

}  // namespace quarterturn
