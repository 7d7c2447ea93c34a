#include "indexer/store/search_table.h"

#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>

#include "indexer/store/first_found.h"
#include "indexer/store/photos_with_words.h"
#include "indexer/store/search_words.h"

namespace quarterturn {
namespace {

using PhotoIds = std::vector<PhotoId>;

// Numbers and fixed words stand in the statement itself, so that SQLite chooses its indexes by
// them; nothing that she typed does.
class Conditions {
  public:
    void add(const std::string& condition) { sql_ += " AND " + condition; }
    template <class Row>
    void equal(const std::string& column, const std::optional<Id<Row>>& id) {
        if (id) add(column + " = " + std::to_string(id->value));
    }
    template <class Word>
    requires std::is_enum_v<Word>
    void equal(const std::string& column, const std::optional<Word>& value) {
        if (value) add(column + " = '" + std::string(word(*value)) + "'");
    }
    const std::string& sql() const { return sql_; }

  private:
    std::string sql_ = "TRUE";
};

std::string nanoseconds(std::chrono::local_days day) {
    return std::to_string(LocalTime(day).time_since_epoch().count());
}

std::string concerns(ClientId client) {
    const std::string number = std::to_string(client.value);
    return "(sitting IN (SELECT id FROM sitting WHERE client = " + number +
           ") OR look IN (SELECT id FROM look WHERE client = " + number +
           ") OR id IN (SELECT photo FROM photo_shown WHERE client = " + number + "))";
}

std::string conditions_of(const PhotoSearch& search) {
    Conditions conditions;
    conditions.add(search.binned ? "binned IS NOT NULL" : "binned IS NULL");
    conditions.equal("look", search.look);
    conditions.equal("sitting", search.sitting);
    conditions.equal("stage", search.stage);
    conditions.equal("angle", search.angle);
    conditions.equal("device", search.device);
    if (search.client) conditions.add(concerns(*search.client));
    if (search.from)
        conditions.add("moment >= " + nanoseconds(std::chrono::local_days(*search.from)));
    if (search.to) {
        conditions.add("moment < " +
                       nanoseconds(std::chrono::local_days(*search.to) + std::chrono::days(1)));
    }
    if (search.unplaced) conditions.add("sitting IS NULL");
    if (search.untagged) conditions.add("(angle IS NULL OR stage IS NULL)");
    if (search.flawed) conditions.add("flaws <> ''");
    return conditions.sql();
}

// In the order of their numbers.
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
    PhotoIds photos = Statement(database, sql).with(query.value).rows([](const Statement& row) {
        PhotoId id;
        row.read(id);
        return id;
    });
    std::ranges::sort(photos);  // sooner than SQLite makes each of them one of its own
    photos.erase(std::ranges::unique(photos).begin(), photos.end());
    return photos;
}

PhotoIds photos_with_all(Database& database, const std::vector<WordQuery>& queries) {
    PhotoIds photos = photos_with(database, queries.front());
    for (const WordQuery& query : std::span(queries).subspan(1)) {
        PhotoIds both;
        std::ranges::set_intersection(photos, photos_with(database, query),
                                      std::back_inserter(both));
        photos = std::move(both);
    }
    return photos;
}

FoundPhoto found_photo_in(const Statement& row) {
    FoundPhoto found;
    row.read(found.id, found.sitting, found.moment);
    return found;
}

const std::string newest_first = " ORDER BY moment DESC, id DESC";

// Where words are looked for among the newest, before all that have them are gathered: enough for
// the first page of words that one photo in twelve has. Of rarer ones all are gathered as quickly.
constexpr int most_looked_through = 8000;

// Which photos of `newest` have the words; ?1 is a JSON list of them.
std::string has_all_words(const std::vector<WordQuery>& queries, std::string& hits) {
    std::string condition = "TRUE";
    for (std::size_t i = 0; i < queries.size(); ++i) {
        const std::string number = std::to_string(i);
        const auto records = [&](const char* kinds) {
            return "(SELECT record FROM hit" + number + " WHERE kind IN " + kinds + ")";
        };
        std::string found = queries[i].condition;
        found.replace(found.find("?1"), 2,
                      "(SELECT value FROM json_each(?1) WHERE key = " + number + ")");
        hits += (i == 0 ? "WITH hit" : ", hit") + number +
                " (kind, record) AS MATERIALIZED (SELECT rowid % 8, rowid / 8 FROM words WHERE " +
                found + ")";
        const std::string theirs =
            "OR client IN " + records("(1)") + " OR wedding IN " + records("(2)");
        condition += " AND (id IN " + records("(0)") +
                     " OR sitting IN (SELECT id FROM sitting WHERE id IN " + records("(3)") +
                     theirs + ") OR look IN (SELECT id FROM look WHERE id IN " + records("(4, 5)") +
                     theirs + ") OR id IN (SELECT photo FROM photo_shown WHERE client IN " +
                     records("(1)") + "))";
    }
    return condition;
}

std::vector<FoundPhoto> newest_with(Database& database, const PhotoSearch& search, int at_most) {
    const std::string newest = "SELECT id, sitting, moment, look FROM photo WHERE " +
                               conditions_of(search) + newest_first + " LIMIT ";
    const auto queries = word_queries(search.words);
    if (queries.empty()) {
        return Statement(database, newest + "?").with(at_most).rows(found_photo_in);
    }
    std::string hits;
    const std::string condition = has_all_words(queries, hits);
    nlohmann::json values = nlohmann::json::array();
    for (const WordQuery& query : queries) values.push_back(query.value);
    const std::string list = values.dump();
    return Statement(database, hits + " SELECT id, sitting, moment FROM (" + newest +
                                   std::to_string(most_looked_through) + ") WHERE " + condition +
                                   newest_first + " LIMIT ?2")
        .with(list, at_most)
        .rows(found_photo_in);
}

}  // namespace

FirstFound first_found(Database& database, const PhotoSearch& search, int at_most) {
    FirstFound found{newest_with(database, search, at_most + 1), false};
    if (found.photos.size() <= static_cast<std::size_t>(at_most)) {
        const bool all = word_queries(search.words).empty();
        return {all ? std::move(found.photos) : SearchTable(database).find(search), true};
    }
    found.photos.pop_back();
    return found;
}

std::vector<FoundPhoto> SearchTable::find(const PhotoSearch& search) {
    const auto queries = word_queries(search.words);
    std::string conditions = conditions_of(search);
    std::string with_words;
    if (!queries.empty()) {
        with_words = json_list(std::span<const PhotoId>(photos_with_all(*database_, queries)));
        conditions += " AND id IN (SELECT value FROM json_each(?))";
    }
    Statement statement(*database_,
                        "SELECT id, sitting, moment FROM photo WHERE " + conditions + newest_first);
    if (!queries.empty()) statement.with(with_words);
    return statement.rows(found_photo_in);
}

std::optional<std::vector<PhotoId>> photos_with_words(Database& database, std::string_view words) {
    const auto queries = word_queries(words);
    if (queries.empty()) return std::nullopt;
    return photos_with_all(database, queries);
}

void SearchTable::rebuild() {
    Transaction transaction(*database_);
    run(*database_, "DELETE FROM words");
    run(*database_, "INSERT INTO words (words) VALUES ('rebuild')");
    run(*database_,
        "INSERT INTO words (rowid, text) SELECT record * 8 + kind, text FROM record_words "
        "WHERE text IS NOT NULL");
    transaction.commit();
}

}  // namespace quarterturn
