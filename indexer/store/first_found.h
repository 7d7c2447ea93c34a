#pragma once
// The first page of a search, without finding the rest.

#include <vector>

#include "indexer/store/database.h"
#include "indexer/store/photo_search.h"

namespace quarterturn {

struct FirstFound {
    std::vector<FoundPhoto> photos;  // as SearchTable::find() answers them, from its first on
    bool all = true;                 // there are no others
};

// At most so many, where that is quicker than finding all; otherwise all of them. Throws
// StoreError.
FirstFound first_found(Database& database, const PhotoSearch& search, int at_most);

}  // namespace quarterturn
