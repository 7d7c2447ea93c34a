#pragma once

#include <span>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

struct PhotosOfSitting {
    Sitting sitting;
    int photos = 0;
};

// How many of these photos lie in each sitting, in the order of starts; those in none are left out.
std::vector<PhotosOfSitting> count_by_sitting(Library& library, std::span<const PhotoId> photos);

}  // namespace quarterturn
