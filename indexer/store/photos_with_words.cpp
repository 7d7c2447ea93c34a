#include "indexer/store/photos_with_words.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <span>
#include <utility>

#include "indexer/store/rows_of_photos.h"
#include "indexer/store/statement.h"

namespace quarterturn {
namespace {

using PhotoIds = std::vector<PhotoId>;

// Gathered in the time in which the newest photos are looked through.
constexpr int few_photos = 1000;

PhotoId id_of_photo(const Statement& row) {
    PhotoId id;
    row.read(id);
    return id;
}

// How many photos the word may find, at a guess; more than few, too, where to count its records is
// to read all texts. A photo's record speaks of one, any other of some thirty.
int photos_about(Database& database, const WordQuery& query) {
    if (!query.by_index) return few_photos + 1;
    return Statement(database, std::string("SELECT ifnull(sum(iif(rowid % 8 = 0, 1, 30)), 0) FROM "
                                           "(SELECT rowid FROM words WHERE ") +
                                   query.condition + " LIMIT ?2)")
        .with(query.value, few_photos + 1)
        .value<int>()
        .value();
}

PhotoIds photos_with(Database& database, const WordQuery& query) {
    const std::string sql =
        std::string(
            "WITH hit (kind, record) AS MATERIALIZED "
            "(SELECT rowid % 8, rowid / 8 FROM words WHERE ") +
        query.condition +
        "), person (id) AS (SELECT record FROM hit WHERE kind = 1), "
        "wedding_hit (id) AS (SELECT record FROM hit WHERE kind = 2) "
        "SELECT record FROM hit WHERE kind = 0 "
        "UNION ALL SELECT id FROM photo WHERE sitting IN (SELECT id FROM sitting "
        "WHERE id IN (SELECT record FROM hit WHERE kind = 3) "
        "OR client IN person OR wedding IN wedding_hit) "
        "UNION ALL SELECT id FROM photo WHERE look IN (SELECT id FROM look "
        "WHERE id IN (SELECT record FROM hit WHERE kind IN (4, 5)) "
        "OR client IN person OR wedding IN wedding_hit) "
        "UNION ALL SELECT photo FROM photo_shown WHERE client IN person";
    PhotoIds photos = Statement(database, sql).with(query.value).rows(id_of_photo);
    std::ranges::sort(photos);  // sooner than SQLite makes each of them one of its own
    photos.erase(std::ranges::unique(photos).begin(), photos.end());
    return photos;
}

PhotoIds those_with(Database& database, const PhotoIds& photos, std::vector<WordQuery> queries) {
    if (std::cmp_less_equal(photos.size(), few_photos)) {
        const auto rows = all_of(rows_of(database, photos));
        for (WordQuery& query : queries) query = among(database, std::move(query), rows);
    }
    const WordsCondition words = with_all_of(queries);
    const std::string list = json_list(std::span<const PhotoId>(photos));
    return Statement(database, words.hits +
                                   "SELECT id FROM photo WHERE id IN (SELECT value FROM "
                                   "json_each(?2))" +
                                   words.true_for + " ORDER BY id")
        .with(words.values, list)
        .rows(id_of_photo);
}

}  // namespace

WordsCondition with_all_of(const std::vector<WordQuery>& queries) {
    WordsCondition words;
    nlohmann::json values = nlohmann::json::array();
    for (const WordQuery& query : queries) {
        const std::string number = std::to_string(values.size());
        // Without the + SQLite makes an index of all hits for each kind.
        const auto records = [&](const char* kinds) {
            return "(SELECT record FROM hit" + number + " WHERE +kind IN " + kinds + ")";
        };
        std::string found = query.condition;
        found.replace(found.find("?1"), 2,
                      "(SELECT value FROM json_each(?1) WHERE key = " + number + ")");
        words.hits += (values.empty() ? "WITH hit" : ", hit") + number +
                      " (kind, record) AS MATERIALIZED (SELECT rowid % 8, rowid / 8 FROM words "
                      "WHERE " +
                      found + ")";
        const std::string of_hers =
            "client IN " + records("(1)") + " OR wedding IN " + records("(2)");
        words.true_for +=
            " AND (+id IN " + records("(0)") + " OR +sitting IN " + records("(3)") +
            " OR +look IN " + records("(4, 5)") + " OR +sitting IN (SELECT id FROM sitting WHERE " +
            of_hers + ") OR +look IN (SELECT id FROM look WHERE " + of_hers +
            ") OR +id IN (SELECT photo FROM photo_shown WHERE client IN " + records("(1)") + "))";
        values.push_back(query.value);
    }
    words.hits += ' ';
    words.values = values.dump();
    return words;
}

// The photos of the rarest word are gathered, and looked at for the others.
PhotoIds photos_with_all(Database& database, std::vector<WordQuery> queries) {
    const auto rarest = std::ranges::min_element(
        queries, {}, [&](const WordQuery& query) { return photos_about(database, query); });
    const PhotoIds photos = photos_with(database, *rarest);
    queries.erase(rarest);
    return queries.empty() ? photos : those_with(database, photos, std::move(queries));
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
