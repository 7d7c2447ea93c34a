#pragma once
// Photos chosen for a purpose, in the order they are to be shown in.

#include <string>
#include <vector>

#include "indexer/record/id.h"

namespace quarterturn {

struct PhotoSelection {
    std::string name;
    std::vector<PhotoId> photos;

    bool operator==(const PhotoSelection&) const = default;
};

}  // namespace quarterturn
