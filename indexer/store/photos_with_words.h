#pragma once
// Which photos have words: in their own record, or in what their client, wedding, sitting, look
// and recipe say.

#include <optional>
#include <string_view>
#include <vector>

#include "indexer/record/photo.h"
#include "indexer/store/database.h"
#include "indexer/store/search_words.h"

namespace quarterturn {

// The photos that a search for the words finds, also in the bin, in the order of their numbers.
// Nothing where there is no word to look for. Throws StoreError.
std::optional<std::vector<PhotoId>> photos_with_words(Database& database, std::string_view words);

// The same for at least one word.
std::vector<PhotoId> photos_with_all(Database& database, std::vector<WordQuery> queries);

// True when one of the words finds so few photos that to gather them takes less than to look among
// the newest.
bool any_is_rare(Database& database, const std::vector<WordQuery>& queries);

}  // namespace quarterturn
