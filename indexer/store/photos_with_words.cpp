#include "indexer/store/photos_with_words.h"

#include <algorithm>

#include "indexer/store/rows_of_photos.h"
#include "indexer/store/statement.h"
#include "indexer/store/word_places.h"

namespace quarterturn {
namespace {

using PhotoIds = std::vector<PhotoId>;

// Gathered in the time in which the newest photos are looked through.
constexpr std::size_t few_photos = 1000;

// How many photos the word may find, at a guess; more than few, too, where to count its records is
// to read all texts. A photo's record speaks of one, any other of some thirty.
std::size_t photos_about(Database& database, const WordQuery& query) {
    if (!query.by_index) return few_photos + 1;
    const auto about = Statement(database,
                                 "SELECT ifnull(sum(iif(rowid % 8 = 0, 1, 30)), 0) FROM "
                                 "(SELECT rowid FROM words WHERE " +
                                     query.condition + " LIMIT ?2)")
                           .with(query.value, static_cast<std::int64_t>(few_photos + 1))
                           .value<std::int64_t>();
    return static_cast<std::size_t>(about.value());
}

PhotoIds ids_of(const std::vector<PlacedPhoto>& photos) {
    PhotoIds ids;
    ids.reserve(photos.size());
    for (const PlacedPhoto& photo : photos) ids.push_back(photo.id);
    return ids;
}

void keep_those_with(Database& database, std::vector<PlacedPhoto>& photos,
                     const std::vector<WordQuery>& queries) {
    std::optional<std::vector<std::int64_t>> rows;
    if (photos.size() <= few_photos) rows = all_of(rows_of(database, ids_of(photos)));
    for (const WordQuery& query : queries) {
        const WordPlaces word(database, rows ? among(database, query, *rows) : query);
        std::erase_if(photos, [&](const PlacedPhoto& photo) { return !word.find(photo); });
    }
}

}  // namespace

// The photos of the rarest word are gathered, and looked at for the others.
PhotoIds photos_with_all(Database& database, std::vector<WordQuery> queries) {
    const auto rarest = std::ranges::min_element(
        queries, {}, [&](const WordQuery& query) { return photos_about(database, query); });
    std::vector<PlacedPhoto> photos = WordPlaces(database, *rarest).all(database);
    queries.erase(rarest);
    if (!queries.empty()) keep_those_with(database, photos, queries);
    PhotoIds ids = ids_of(photos);
    std::ranges::sort(ids);
    return ids;
}

std::optional<PhotoIds> photos_with_words(Database& database, std::string_view words) {
    auto queries = word_queries(words);
    if (queries.empty()) return std::nullopt;
    return photos_with_all(database, std::move(queries));
}

bool any_is_rare(Database& database, const std::vector<WordQuery>& queries) {
    return std::ranges::any_of(queries, [&](const WordQuery& query) {
        return photos_about(database, query) <= few_photos;
    });
}

}  // namespace quarterturn
