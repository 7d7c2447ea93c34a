#pragma once
// The rows of the index of words (search_words.h) that speak of a photo: its own, and those of its
// client, wedding, sitting, look and recipe.

#include <cstdint>
#include <map>
#include <span>
#include <vector>

#include "indexer/record/photo.h"
#include "indexer/store/database.h"

namespace quarterturn {

using RowsOfPhotos = std::map<PhotoId, std::vector<std::int64_t>>;  // a photo's own row first

// Throws StoreError.
RowsOfPhotos rows_of(Database& database, std::span<const PhotoId> photos);

// Each once, in order.
std::vector<std::int64_t> all_of(const RowsOfPhotos& rows);

}  // namespace quarterturn
