#pragma once
// Pairs as qturn tells them.

#include <map>
#include <string>
#include <vector>

#include "app/qturn/names.h"
#include "app/qturn/reply.h"
#include "indexer/record/pair.h"

namespace quarterturn {

// The photos of some pairs, read at once.
std::map<PhotoId, Photo> photos_of(Library& library, const std::vector<Pair>& pairs);

// Number, look, client, kind, angle, day, the two photos, and what she said of it.
std::vector<std::string> pair_cells(const Pair& pair, const Names& names,
                                    const std::map<PhotoId, Photo>& photos,
                                    const std::map<LookId, Look>& looks);

nlohmann::json to_json(const Pair& pair, const Names& names,
                       const std::map<PhotoId, Photo>& photos);
nlohmann::json to_json(const PairFilter& filter);

// Sentences about what has become of the photos she chose or pinned.
std::vector<std::string> side_notes(const Pair& pair, const std::map<PhotoId, Photo>& photos);

}  // namespace quarterturn
