#pragma once

#include <span>
#include <vector>

#include "indexer/store/database.h"
#include "indexer/store/photo_search.h"

namespace quarterturn {

// Finding photos by words and by what is known of them. All functions throw StoreError.
class SearchTable {
  public:
    explicit SearchTable(Database& database) : database_(&database) {}

    // The newest first, those of unknown moment last.
    std::vector<FoundPhoto> find(const PhotoSearch& search);

    // Where the words stand, for each of these photos: in the photo's own record first. Nothing
    // for a photo that is found by none of them.
    std::vector<std::vector<FoundText>> found_texts(std::span<const PhotoId> photos,
                                                    std::string_view words);

    // Makes the index of words anew from the records. Nothing of what was erased is left in it.
    void rebuild();

  private:
    Database* database_;
};

}  // namespace quarterturn
