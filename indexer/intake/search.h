#pragma once
// Choosing photos by what is known of them.

#include <optional>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

// Everything that is set must hold.
struct PhotoSearch {
    std::optional<LookId> look{};  // tagged with it
    std::optional<SittingId> sitting{};
    std::optional<ClientId> client{};  // her sitting, her look, or shown in the picture
    bool unplaced = false;             // in no sitting
    bool untagged = false;             // no angle or no stage yet
    bool flawed = false;               // a flaw was found, accepted or not
};

// In the order of moments. Throws StoreError.
std::vector<Photo> search_photos(Library& library, const PhotoSearch& search);

}  // namespace quarterturn
