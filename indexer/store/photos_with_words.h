#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "indexer/record/photo.h"
#include "indexer/store/database.h"

namespace quarterturn {

// The photos that a search for the words finds, also in the bin, in the order of their numbers.
// Nothing where there is no word to look for. Throws StoreError.
std::optional<std::vector<PhotoId>> photos_with_words(Database& database, std::string_view words);

}  // namespace quarterturn
